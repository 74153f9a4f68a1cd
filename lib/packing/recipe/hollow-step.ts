import type { DraftSupply } from "#lib/packing/draft-supply";
import { fillAmount } from "#lib/packing/fill/fill-amount";
import type { Habits } from "#lib/packing/habits";
import { naturalAmount } from "#lib/packing/natural-amount";
import { hollowVolume } from "#lib/packing/piece/body-volume";
import type { Piece } from "#lib/packing/piece/piece";
import { MATERIAL_WORDS, type UnplacedStep, unplacedStep } from "#lib/packing/recipe/drafted-step";
import { volumeInTheory } from "#lib/packing/recipe/theory-text";
import { formatEstimate } from "#lib/units/amount-text";
import type { Measures } from "#lib/units/measures";

/**
 * What fills the hollows of a piece, as a step.
 *
 * @param piece - the piece
 * @param supply - fill that is soft enough for the surface
 * @param habits - share of a hollow that is filled, and how
 * @param measures - the shop's measures, for the words
 * @returns a step taken for each piece, null for a piece without hollows
 * @throws RangeError if the supply fills nothing
 * @example hollowStep(mug, tissue, USUAL_HABITS, "imperial")?.words // "Fill the hollow loosely with tissue"
 */
export function hollowStep(
  piece: Piece,
  supply: DraftSupply,
  habits: Habits,
  measures: Measures,
): UnplacedStep | null {
  const ml = piece.hollows.reduce((sum, hollow) => sum + hollowVolume(hollow, piece.body), 0);
  if (ml === 0) return null;
  const fill = fillAmount(ml * habits.hollowShare, supply, habits, habits.hollowManner);
  if (fill.kind === "no-fill") {
    throw new RangeError(`hollowStep requires a supply that fills, got ${supply.supplyId}`);
  }
  const manner = habits.hollowManner === "loose" ? "loosely" : "firmly";
  const words = `Fill the ${piece.hollows.length > 1 ? "hollows" : "hollow"} ${manner} with ${MATERIAL_WORDS[supply.material]}`;
  const theory = formatEstimate(fill.theory, supply.useUnit);
  const say = (volume: number): string => volumeInTheory(volume, measures);
  const share = `${Math.round(habits.hollowShare * 100)} % of ${say(ml)}`;
  const reason = `${share}, at ${say(fill.mlPerUnit)} each: ${theory}, rounded up.`;
  const amount = naturalAmount(fill.theory, supply.useUnit);
  return unplacedStep({ job: "hollow", words, supply, amount, per: "piece", theory, reason });
}
