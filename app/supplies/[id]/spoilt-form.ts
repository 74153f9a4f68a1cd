import { z } from "zod";
import type { Measures } from "#lib/units/measures";
import type { UseUnit } from "#lib/units/use-unit";
import { amountAboveZero, dayText, neededText } from "../../_parts/typed-fields";

/** What was spoilt: how much, on which day, and why; and the newest ledger line when the form was shown. */
export function spoiltForm(unit: UseUnit, measures: Measures) {
  return z.object({
    amount: amountAboveZero(unit, measures),
    on: dayText,
    shownAfter: z.coerce.number("Open this page anew and send it again.").int().nonnegative(),
    words: neededText("Say why in a word or two: torn, wet, end of the roll."),
  });
}
