import { massAsStored, massIn } from "#lib/postage/exact-mass";
import { lengthAndGirth } from "#lib/postage/length-and-girth";
import { type ParcelSize, parcelSize, sidesIn } from "#lib/postage/parcel-size";
import { compareRatios, ratio, ratioProduct, ratioQuotient, ratioSum } from "#lib/postage/ratio";
import type { Milligrams } from "#lib/units/mass";
import type { Ratio } from "#lib/units/number-text";

/** A packed carton: gross weight (contents, packing and carton) and outside sizes in micrometres, in any order. */
export type CartonLoad = { readonly grossMg: Milligrams; readonly outsideUm: ParcelSize["um"] };

/** One limit held against a load: pounds for weight, inches for the other two. At the limit is within it. */
export type LoadLimit = {
  readonly rule: "certificate" | "postalGrade";
  readonly measure: "weight" | "unitedInches" | "lengthAndGirth";
  readonly limit: Ratio;
  readonly actual: Ratio;
};

const HUNDRED = 100n;

/**
 * The gross weight in pounds, so that 20 lb as stored is not over 20 lb.
 *
 * @param load what is packed
 * @returns exact pounds
 * @example grossPounds({ grossMg: milligrams(9071847), outsideUm }) // not over 20
 */
export function grossPounds({ grossMg }: CartonLoad): Ratio {
  return massIn(massAsStored(grossMg, { measures: "imperial" }).ng, "lb");
}

/**
 * United inches of the certificate: length + width + depth of the outside. A post measures length and girth instead.
 *
 * @param load what is packed
 * @returns exact inches
 * @throws RangeError if a side is not above zero
 * @example unitedInches({ grossMg, outsideUm: [457200, 304800, 254000].map(micrometres) }) // 40
 */
export function unitedInches({ outsideUm }: CartonLoad): Ratio {
  return ratioSum(...sidesIn(parcelSize(outsideUm, null, "box"), "in"));
}

/**
 * Length and girth of a load, as the post measures it.
 *
 * @param load what is packed
 * @returns exact inches
 * @throws RangeError if a side is not above zero
 * @example girthInches({ grossMg, outsideUm: [457200, 304800, 254000].map(micrometres) }) // 62
 */
export function girthInches({ outsideUm }: CartonLoad): Ratio {
  return lengthAndGirth(sidesIn(parcelSize(outsideUm, null, "box"), "in")).sum;
}

/**
 * A limit in pounds, counted down where the board is trusted with less than it is rated for.
 *
 * @param pounds of the table
 * @param percent trusted, a whole number from 1 to 100
 * @returns exact pounds
 * @throws RangeError if the percentage is not as said
 * @example trustedPounds(65, 70) // 45.5
 */
export function trustedPounds(pounds: number, percent: number): Ratio {
  if (!(Number.isInteger(percent) && percent >= 1 && percent <= 100)) {
    throw new RangeError(`trustedPounds requires a whole percentage from 1 to 100, got ${percent}`);
  }
  return ratioProduct(ratio(BigInt(pounds)), ratio(BigInt(percent), HUNDRED));
}

/**
 * Whether a load is over a limit.
 *
 * @param limit held against the load
 */
export function isOver({ actual, limit }: LoadLimit): boolean {
  return compareRatios(actual, limit) > 0;
}

/**
 * Limits by how much of them is used: the first one bites first.
 *
 * @param limits in any order
 * @returns the most used first; as given where equally used
 */
export function tightestFirst(limits: readonly LoadLimit[]): readonly LoadLimit[] {
  const share = ({ actual, limit }: LoadLimit) => ratioQuotient(actual, limit);
  return limits.toSorted((a, b) => compareRatios(share(b), share(a)));
}
