import type { Day } from "#lib/units/day";
import { unitWord } from "#lib/units/use-unit";
import type { Supply } from "#prisma/records/supplies";
import { RecordForm } from "../../../_parts/record-form";
import { Section } from "../../../_parts/section";
import { spoilSupply } from "../stock-actions";

type SpoiltProps = {
  readonly supply: Supply;
  readonly today: Day;
  /** The form's key, so that sending twice books once. */
  readonly lastLine: number;
};

/** Torn tissue, a wet carton, the end of a roll: out of stock, with the reason. */
export function Spoilt({ supply, today, lastLine }: SpoiltProps) {
  const word = unitWord(supply.useUnit, 2);
  return (
    <Section title="Was some of it spoilt?" id="spoilt">
      <RecordForm
        action={spoilSupply.bind(null, supply.id)}
        label={`Spoilt ${supply.name}`}
        layout="line"
        fields={[
          { name: "shownAfter", label: "", kind: "hidden", value: String(lastLine) },
          {
            name: "amount",
            label: word === "" ? "How many" : `How many ${word}`,
            kind: "number",
            required: true,
          },
          { name: "words", label: "Why", kind: "text", hint: "torn, wet, end of the roll", required: true },
          { name: "on", label: "On", kind: "day", value: today },
        ]}
        submit="Book as spoilt"
      />
    </Section>
  );
}
