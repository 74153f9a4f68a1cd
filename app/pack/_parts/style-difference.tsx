"use client";

import { Button } from "../../_parts/button";
import { differenceWords, stepsWords } from "../difference-words";
import type { DraftChange } from "../draft-change";
import type { PackingChoices } from "../packing-choices";
import type { PackingDraft } from "../packing-draft";
import { STYLE_WORDS } from "../parcel-words";
import { styleDifference } from "../style-difference";
import type { WeightOutlook } from "../weight-outlook";
import styles from "./pack.module.css";

type StyleDifferenceProps = {
  readonly draft: PackingDraft;
  readonly outlook: WeightOutlook | null;
  readonly choices: PackingChoices;
  readonly onChange: (change: DraftChange) => void;
};

/** What the parcel in hand would cost in the other styles, with the odds of each postage step in both. */
export function StyleDifference({ draft, outlook, choices, onChange }: StyleDifferenceProps) {
  const [here, ...others] = styleDifference(draft, outlook, choices);
  if (here === undefined) return null;
  const zone = choices.zones.find(({ id }) => id === draft.zoneId)?.name ?? null;
  return (
    <section aria-label="The other styles">
      {others.map((other) => (
        <div key={other.style}>
          <p className={styles.difference}>{differenceWords(here, other, choices, zone)}</p>
          <p className={styles.quiet}>
            {stepsWords(here)} {stepsWords(other)}
          </p>
          <Button tone="plain" onPress={() => onChange({ kind: "style", style: other.style })}>
            Pack it on {STYLE_WORDS[other.style]}
          </Button>
        </div>
      ))}
    </section>
  );
}
