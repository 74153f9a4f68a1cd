"use client";

import { formatMass } from "#lib/units/mass";
import { Field } from "../../_parts/field";
import type { DraftChange } from "../draft-change";
import type { ExpectedWeight } from "../expected-weight";
import type { PackingChoices } from "../packing-choices";
import type { PackingDraft } from "../packing-draft";
import { scaleCheck } from "../scale-check";
import type { WeightOutlook } from "../weight-outlook";
import styles from "./pack.module.css";
import { PromiseField } from "./promise-field";
import { SafetyLine } from "./safety-line";
import { ScaleMessage } from "./scale-message";
import { WeightBasis } from "./weight-basis";

type WeightBesideProps = {
  readonly draft: PackingDraft;
  readonly weight: ExpectedWeight;
  /** Null where a part of it has no mass. */
  readonly outlook: WeightOutlook | null;
  readonly choices: PackingChoices;
  readonly onChange: (change: DraftChange) => void;
};

/** What the scale should say, the band that was promised, and the field for what the scale does say. */
export function WeightBeside({ draft, weight, outlook, choices, onChange }: WeightBesideProps) {
  const { measures } = choices;
  const check = scaleCheck(draft, outlook?.weight ?? null, measures);
  const example = measures === "imperial" ? "2 lb 15 oz" : "1.33 kg";
  return (
    <section aria-label="Weight">
      <h2 className={styles.weight}>{headingOf(weight, outlook, choices)}</h2>
      <WeightBasis weight={weight} outlook={outlook} choices={choices} />
      <div className={styles.fields}>
        <PromiseField draft={draft} outlook={outlook} steps={choices.steps} onChange={onChange} />
        <Field
          label="Scale says"
          size="short"
          value={draft.scale}
          placeholder={example}
          onChange={(text) => onChange({ kind: "text", part: "scale", text })}
          {...(check.kind === "unreadable"
            ? { error: `“${draft.scale}” can't be read. Type it like ${example}, or leave it empty.` }
            : {})}
        />
        <Field
          label="Order reference"
          size="short"
          value={draft.orders}
          hint="Two orders in one box: a comma between them."
          onChange={(text) => onChange({ kind: "text", part: "orders", text })}
        />
      </div>
      <ScaleMessage check={check} draft={draft} measures={measures} onChange={onChange} />
      <SafetyLine mg={weight.kind === "expected" ? weight.mg : weight.knownMg} />
    </section>
  );
}

function headingOf(weight: ExpectedWeight, outlook: WeightOutlook | null, choices: PackingChoices): string {
  if (outlook !== null && !outlook.weight.guess)
    return `${formatMass(outlook.weight.likelyMg, choices.measures)} likely`;
  return weight.kind === "expected"
    ? `${formatMass(weight.mg, choices.measures)} expected`
    : "Weight not known yet";
}
