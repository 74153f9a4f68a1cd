"use client";

import { formatMass, parseMass } from "#lib/units/mass";
import { Field } from "../../_parts/field";
import type { DraftChange } from "../draft-change";
import type { ExpectedWeight } from "../expected-weight";
import type { PackingChoices } from "../packing-choices";
import type { PackingDraft } from "../packing-draft";
import styles from "./pack.module.css";
import { SafetyLine } from "./safety-line";

type WeightBesideProps = {
  readonly draft: PackingDraft;
  readonly weight: ExpectedWeight;
  readonly choices: PackingChoices;
  readonly onChange: (change: DraftChange) => void;
};

/** What the scale should say, what is not known of it, and the field for what it does say. */
export function WeightBeside({ draft, weight, choices, onChange }: WeightBesideProps) {
  const unread = draft.scale.trim() !== "" && parseMass(draft.scale, choices.measures).kind === "unreadable";
  const example = choices.measures === "imperial" ? "2 lb 15 oz" : "1.33 kg";
  return (
    <section aria-label="Weight">
      <h2 className={styles.weight}>
        {weight.kind === "expected"
          ? `${formatMass(weight.mg, choices.measures)} expected`
          : "Weight not known yet"}
      </h2>
      <p className={styles.quiet}>
        {weight.kind === "expected"
          ? "An estimate from pieces, card and carton: check it on the scale."
          : `${weight.knownMg === 0 ? "Nothing of it is known" : `${formatMass(weight.knownMg, choices.measures)} without`}${
              weight.knownMg === 0 ? ":" : ""
            } ${weight.unknown.join(", ")}. The scale decides.`}
      </p>
      <div className={styles.fields}>
        <Field
          label="Scale says"
          size="short"
          value={draft.scale}
          placeholder={example}
          onChange={(text) => onChange({ kind: "text", part: "scale", text })}
          {...(unread
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
      <SafetyLine mg={weight.kind === "expected" ? weight.mg : weight.knownMg} />
    </section>
  );
}
