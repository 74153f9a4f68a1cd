import { compareRatios, ratio, ratioProduct, ratioText } from "#lib/postage/ratio";
import type { LengthUnit, TypedLength } from "#lib/postage/typed-measure";
import { LENGTH_WORDS, type Micrometres } from "#lib/units/length";
import { nearestInteger } from "#lib/units/nearest-integer";
import type { Ratio } from "#lib/units/number-text";

/** Three sides of a parcel. */
export type Sides = readonly [Ratio, Ratio, Ratio];

/** Outside sizes of a parcel, at its widest. What is no box (a tube, an odd wrap) is measured as the box round it. */
export type ParcelSize = {
  readonly um: readonly [Micrometres, Micrometres, Micrometres];
  /** as a person typed it, with its unit, or null */
  readonly typed: string | null;
  readonly shape: "box" | "other";
};

/** How `ratioText` begins where a number goes on. */
const ABOUT = "about ";

/** Parts of an inch that a ruler or a list names; most are no whole number of micrometres. */
const INCH_PARTS = [64n, 1_000n];

/**
 * Outside sizes of a parcel.
 *
 * @param um micrometres of three sides, in any order, above zero
 * @param typed as a person typed it, or null
 * @param shape whether it is a box
 * @throws RangeError if there are not three sides above zero
 * @example parcelSize([304800, 228600, 203200].map(micrometres), "12 x 9 x 8", "box")
 */
export function parcelSize(
  um: readonly Micrometres[],
  typed: string | null,
  shape: ParcelSize["shape"],
): ParcelSize {
  const [first, second, third] = um;
  if (um.length !== 3 || !first || !second || !third) {
    throw new RangeError(`parcelSize requires three sides above 0, got ${um.join(", ")}`);
  }
  return { um: [first, second, third], typed, shape };
}

/**
 * The sides in a unit of the card, as a ruler reads them: a side stored to the micrometre is the 64th or the thousandth
 * of an inch that is stored as the same number, if there is one. So 12 1/16 in is not over 12 1/16 in.
 *
 * @param size of the parcel
 * @param unit of the card
 * @returns in the order typed
 * @example sidesIn(size, "in") // 12, 9 and 8 for 12 x 9 x 8 in
 */
export function sidesIn({ um: [first, second, third] }: ParcelSize, unit: LengthUnit): Sides {
  return [sideIn(first, unit), sideIn(second, unit), sideIn(third, unit)];
}

/**
 * A length as typed, exactly.
 *
 * @param typed number and unit
 * @returns micrometres
 * @example lengthAsTyped({ text: "1/32", unit: "in", value: ratio(1n, 32n) }) // 25400/32
 */
export function lengthAsTyped({ value, unit }: TypedLength): Ratio {
  return ratioProduct(value, ratio(micrometresPer(unit)));
}

function micrometresPer(unit: LengthUnit): bigint {
  const um = LENGTH_WORDS.get(unit);
  if (um === undefined) throw new RangeError(`micrometresPer requires a unit of length, got ${unit}`);
  return um;
}

function sideIn(um: Micrometres, unit: LengthUnit): Ratio {
  const perUnit = micrometresPer(unit);
  for (const parts of unit === "in" ? INCH_PARTS : []) {
    const count = BigInt(nearestInteger(BigInt(um) * parts, perUnit));
    if (nearestInteger(count * perUnit, parts) === um) return ratio(count, parts);
  }
  return ratio(BigInt(um), perUnit);
}

/**
 * Sides by their length; a post calls the longest the length.
 *
 * @param sides in any order
 * @returns the longest first
 */
export function longestFirst([first, second, third]: Sides): Sides {
  const [low, high] = compareRatios(first, second) > 0 ? [second, first] : [first, second];
  if (compareRatios(third, high) > 0) return [third, high, low];
  return compareRatios(third, low) > 0 ? [high, third, low] : [high, low, third];
}

/**
 * Sides in figures.
 *
 * @param sides in one unit
 * @param unit their unit
 * @example sidesText([ratio(13n), ratio(12n), ratio(12n)], "in") // "13 × 12 × 12 in"
 */
export function sidesText(sides: Sides, unit: LengthUnit): string {
  const texts = sides.map(ratioText);
  const isRounded = texts.some((text) => text.startsWith(ABOUT));
  return `${isRounded ? ABOUT : ""}${texts.map((text) => text.replace(ABOUT, "")).join(" × ")} ${unit}`;
}
