import type { DraftSupply } from "#lib/packing/draft-supply";
import type { Habits } from "#lib/packing/habits";
import { naturalAmount } from "#lib/packing/natural-amount";
import { MATERIAL_WORDS, type UnplacedStep, unplacedStep } from "#lib/packing/recipe/drafted-step";
import { lengthInTheory } from "#lib/packing/recipe/theory-text";
import { amountHolding } from "#lib/packing/unit-area";
import { unitLength } from "#lib/packing/unit-length";
import { tapeStrips } from "#lib/packing/wrap/tape-strips";
import { amountOfUnits } from "#lib/units/amount";
import type { Measures } from "#lib/units/measures";

/**
 * What holds wraps and guards, as a step: strips of household tape, or as many bands.
 *
 * @param bound - whole wraps and guards of one piece
 * @param supply - tape by length or by strip, or bands each
 * @param habits - strips for each wrap and guard, and their length
 * @param measures - the shop's measures, for the words
 * @returns a step taken for each piece, null where nothing is bound
 * @throws RangeError if the supply has a use unit that binds nothing
 * @example bindStep({ wraps: 1, guards: 1 }, householdTape, USUAL_HABITS, "imperial")?.used // "4 strips"
 */
export function bindStep(
  bound: { readonly wraps: number; readonly guards: number },
  supply: DraftSupply,
  habits: Pick<Habits, "strips">,
  measures: Measures,
): UnplacedStep | null {
  const strips = tapeStrips(bound, habits.strips);
  if (strips === 0) return null;
  const length = unitLength(supply, habits.strips.lengthUm);
  if (length === null) {
    throw new RangeError(`bindStep requires a supply by length, strip or each, got ${supply.supplyId}`);
  }
  const single = length === "each";
  const amount = single
    ? amountOfUnits(strips)
    : naturalAmount(amountHolding(strips * habits.strips.lengthUm, length), supply.useUnit);
  const theory = single
    ? `${strips} bands`
    : `${strips} strips of ${lengthInTheory(habits.strips.lengthUm, measures)}`;
  const { perWrap, perGuard } = habits.strips;
  const reason = `${bound.wraps} × ${perWrap} for the wraps and ${bound.guards} × ${perGuard} for the guards: ${theory}.`;
  const words = `Hold it with ${MATERIAL_WORDS[supply.material]}, never on the surface itself`;
  return unplacedStep({ job: "bind", words, supply, amount, per: "piece", theory, reason });
}
