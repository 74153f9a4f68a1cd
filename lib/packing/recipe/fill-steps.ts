import type { Block } from "#lib/packing/block";
import type { DraftSupply } from "#lib/packing/draft-supply";
import { fillAmount } from "#lib/packing/fill/fill-amount";
import { fillSplit } from "#lib/packing/fill/fill-split";
import { sharedAmount } from "#lib/packing/fill/shared-amount";
import type { Habits } from "#lib/packing/habits";
import { naturalStep } from "#lib/packing/natural-amount";
import { MATERIAL_WORDS, type UnplacedStep, unplacedStep } from "#lib/packing/recipe/drafted-step";
import { volumeInTheory } from "#lib/packing/recipe/theory-text";
import { amountFraction, amount as amountOf, amountOfUnits, unitsOf } from "#lib/units/amount";
import { formatAmount, formatEstimate } from "#lib/units/amount-text";
import type { Measures } from "#lib/units/measures";

/** Loose fill is poured: a thousandth of a bag, where nobody takes half of one. */
const POURED_STEP = amountFraction(1, 1000);

/**
 * What fills the void round a load, as steps below, beside and above it. The whole is rounded up once and then shared
 * out, so that three roundings do not add three half sheets.
 *
 * @param inside - inside of the carton in micrometres
 * @param load - block as it stands, the millilitres it takes, the cushion below it, and what it is called
 * @param supply - the fill
 * @param habits - bulk and manner
 * @param measures - the shop's measures, for the words
 * @returns steps taken once a parcel; a place without fill is left out
 * @throws RangeError if the load does not fit or the supply fills nothing
 * @example fillSteps(cube12, { block: cube8, ml, baseUm: 50800, name: "the piece" }, paper, USUAL_HABITS, "imperial")
 */
export function fillSteps(
  inside: Block,
  load: { readonly block: Block; readonly ml: number; readonly baseUm: number; readonly name: string },
  supply: DraftSupply,
  habits: Habits,
  measures: Measures,
): readonly UnplacedStep[] {
  const split = fillSplit(inside, load, load.baseUm);
  const voids = [split.baseMl, split.sidesMl, split.topMl];
  const ml = voids.reduce((sum, each) => sum + each, 0);
  if (ml <= 0) return [];
  const fill = fillAmount(ml, supply, habits, habits.fillManner);
  if (fill.kind === "no-fill")
    throw new RangeError(`fillSteps requires a supply that fills, got ${supply.supplyId}`);
  const step = supply.form.kind === "loose" ? POURED_STEP : naturalStep(supply.useUnit);
  const whole = amountOf(Math.ceil(fill.theory / step) * step);
  const shares = sharedAmount(whole, voids, step);
  const material = MATERIAL_WORDS[supply.material];
  const places = [
    `Lay a base of ${material} under ${load.name}`,
    `Fill round ${load.name} with ${material}`,
    `Fill the top with ${material}, close, shake, and add where it moves`,
  ];
  const say = (volume: number): string => volumeInTheory(volume, measures);
  const all = `${formatEstimate(fill.theory, supply.useUnit)} in all, taken: ${formatAmount(whole, supply.useUnit)}`;
  return places.flatMap((words, index) => {
    const amount = shares[index];
    const part = voids[index] ?? 0;
    if (amount === undefined || amount === 0) return [];
    const theory = formatEstimate(amountOfUnits((unitsOf(fill.theory) * part) / ml), supply.useUnit);
    const reason = `${say(part)} of ${say(ml)}, at ${say(fill.mlPerUnit)} each: ${theory} of ${all}.`;
    return [unplacedStep({ job: "fill", words, supply, amount, per: "parcel", theory, reason })];
  });
}
