import { cartonTape } from "#lib/packing/carton-tape";
import type { DraftSupply } from "#lib/packing/draft-supply";
import type { Habits } from "#lib/packing/habits";
import { naturalAmount } from "#lib/packing/natural-amount";
import type { DraftCarton } from "#lib/packing/recipe/draft-request";
import { MATERIAL_WORDS, type UnplacedStep, unplacedStep } from "#lib/packing/recipe/drafted-step";
import { lengthInTheory } from "#lib/packing/recipe/theory-text";
import { amountHolding } from "#lib/packing/unit-area";
import { unitLength } from "#lib/packing/unit-length";
import type { Measures } from "#lib/units/measures";

const PATTERN_WORDS: Readonly<Record<Habits["closing"], string>> = {
  single: "one strip above and below",
  "doubled-bottom": "one strip above and two below",
  h: "an H above and below",
};

/**
 * The tape that closes a carton, as a step.
 *
 * @param carton - inside length and width in micrometres
 * @param name - what the carton is called in the words
 * @param supply - tape by its length
 * @param habits - closing pattern, legs, tape used over theory
 * @param measures - the shop's measures, for the words
 * @returns a step taken once a parcel
 * @throws RangeError if the tape's use unit says no length
 * @example sealStep(cube8, "the carton", tape, USUAL_HABITS, "imperial").theory // "75 in"
 */
export function sealStep(
  carton: Pick<DraftCarton, "inside">,
  name: string,
  supply: DraftSupply,
  habits: Pick<Habits, "closing" | "legs" | "tapeFactor" | "strips">,
  measures: Measures,
): UnplacedStep {
  const perUnit = unitLength(supply, habits.strips.lengthUm);
  if (perUnit === null || perUnit === "each") {
    throw new RangeError(`sealStep requires tape by its length, got ${supply.supplyId}`);
  }
  const pattern = habits.closing;
  const { lengthUm, widthUm } = carton.inside;
  const strips = cartonTape({ lengthUm, widthUm, pattern }, habits.legs);
  const amount = naturalAmount(amountHolding(strips * habits.tapeFactor, perUnit), supply.useUnit);
  const theory = lengthInTheory(strips, measures);
  const factor = habits.tapeFactor === 1 ? "" : `, × ${Number(habits.tapeFactor.toFixed(2))} as used so far`;
  const reason = `${PATTERN_WORDS[pattern]}: ${theory}${factor}.`;
  const words = `Close ${name} with ${MATERIAL_WORDS[supply.material]}: ${PATTERN_WORDS[pattern]}`;
  return unplacedStep({ job: "seal", words, supply, amount, per: "parcel", theory, reason });
}
