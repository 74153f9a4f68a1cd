import { ratio, ratioQuotient } from "#lib/postage/ratio";
import type { MassUnit, TypedMass } from "#lib/postage/typed-measure";
import { formatMass, MASS_WORDS, type Milligrams } from "#lib/units/mass";
import type { Measures } from "#lib/units/measures";
import type { Ratio } from "#lib/units/number-text";

const NANOGRAMS_PER_MILLIGRAM = 1_000_000n;

/** A mass that can be held against a limit, and how it is shown. */
export type ExactMass = { readonly ng: Ratio; readonly text: string };

/**
 * Nanograms in one unit; an ounce is a whole number of them.
 *
 * @param unit of a rate card
 * @throws RangeError if the unit is not one of mass
 * @example nanogramsPer("oz") // 28349523125n
 */
export function nanogramsPer(unit: MassUnit): bigint {
  const ng = MASS_WORDS.get(unit);
  if (ng === undefined) throw new RangeError(`nanogramsPer requires a unit of mass, got ${unit}`);
  return ng;
}

/**
 * Nanograms of a mass as typed, exactly.
 *
 * @param typed number and unit
 * @example nanogramsOf({ text: "16", unit: "oz", value: ratio(16n) }) // that of 1 lb
 */
export function nanogramsOf({ value, unit }: TypedMass): Ratio {
  return ratio(value.numerator * nanogramsPer(unit), value.denominator);
}

/**
 * A stored mass. What was typed was rounded to the milligram, at most half a milligram up; that half is taken off again,
 * so that 5 oz, stored as 141,748 mg, is not over 5 oz (141,747.615625 mg).
 *
 * @param mg milligrams
 * @param shown the shop's measures, or the text as it was typed
 * @example massAsStored(milligrams(141748), { measures: "imperial" }).text // "5 oz"
 */
export function massAsStored(
  mg: Milligrams,
  shown: { readonly measures: Measures } | { readonly typed: string },
): ExactMass {
  const halves = mg === 0 ? 0n : 2n * BigInt(mg) - 1n;
  const text = "typed" in shown ? shown.typed : formatMass(mg, shown.measures);
  return { ng: ratio(halves * NANOGRAMS_PER_MILLIGRAM, 2n), text };
}

/**
 * A mass in a unit of the card.
 *
 * @param ng nanograms
 * @param unit of the card
 * @example massIn(ratio(453592370000n), "oz") // equal to 16
 */
export function massIn(ng: Ratio, unit: MassUnit): Ratio {
  return ratioQuotient(ng, ratio(nanogramsPer(unit)));
}

/**
 * A mass in milligrams, for chances.
 *
 * @param ng nanograms
 * @example milligramsOf(ratio(28349523125n)) // 28349.523125
 */
export function milligramsOf(ng: Ratio): number {
  return Number(ng.numerator) / (Number(ng.denominator) * Number(NANOGRAMS_PER_MILLIGRAM));
}
