import { checkOutcome } from "#lib/replenishment/check-outcome";
import { formatDay } from "#lib/units/day-text";
import type { SaidCheck } from "#prisma/records/said-checks";
import { Section } from "../../_parts/section";
import { outcomeWords } from "../outcome-words";

type LastCheckProps = {
  readonly said: SaidCheck | null;
  readonly nameOf: (supplyId: string) => string;
};

/** How the check before turned out; nothing where none was kept. */
export function LastCheck({ said, nameOf }: LastCheckProps) {
  if (said === null) return null;
  const words = outcomeWords(checkOutcome(said.rows), nameOf);
  return (
    <Section title={`How the check of ${formatDay(said.saidOn, { weekday: true })} turned out`}>
      <p>{words.join(" ")}</p>
    </Section>
  );
}
