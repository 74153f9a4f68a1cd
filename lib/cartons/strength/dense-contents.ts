import { massAsStored, massIn } from "#lib/postage/exact-mass";
import { longestFirst, type ParcelSize, parcelSize, sidesIn } from "#lib/postage/parcel-size";
import { compareRatios, ratio, ratioNumber, ratioProduct, ratioQuotient } from "#lib/postage/ratio";
import type { Milligrams } from "#lib/units/mass";

/** Pounds a square foot that dense contents may press on the smallest face. */
const MOST_POUNDS_PER_SQUARE_FOOT = 60n;
const SQUARE_INCHES_PER_SQUARE_FOOT = 144n;

/**
 * How hard contents press on the smallest face of their carton, were it to stand on it.
 *
 * @param contentsMg mass of the contents
 * @param sizesUm of the carton in micrometres, in any order, above zero
 * @returns pounds a square inch, and whether that is within 60 lb a square foot
 * @throws RangeError if a side is not above zero
 * @see a national post's guide to packing, 2002, dense contents: tests/reference/carton-strength.test.ts
 * @example densePressure(milligrams(9071847), [203200, 152400, 254000].map(micrometres)) // 0.41667, within
 */
export function densePressure(
  contentsMg: Milligrams,
  sizesUm: ParcelSize["um"],
): { readonly psi: number; readonly isWithin: boolean } {
  const [, middle, shortest] = longestFirst(sidesIn(parcelSize(sizesUm, null, "box"), "in"));
  const pounds = massIn(massAsStored(contentsMg, { measures: "imperial" }).ng, "lb");
  const pressure = ratioQuotient(pounds, ratioProduct(middle, shortest));
  const most = ratio(MOST_POUNDS_PER_SQUARE_FOOT, SQUARE_INCHES_PER_SQUARE_FOOT);
  return { psi: ratioNumber(pressure), isWithin: compareRatios(pressure, most) <= 0 };
}
