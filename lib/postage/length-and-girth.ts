import { longestFirst, type Sides } from "#lib/postage/parcel-size";
import { ratio, ratioProduct, ratioSum } from "#lib/postage/ratio";
import type { Ratio } from "#lib/units/number-text";

/** How posts measure a large parcel; not the united inches (length + width + depth) of a carton's certificate. */
type LengthAndGirth = { readonly length: Ratio; readonly girth: Ratio; readonly sum: Ratio };

/**
 * Length and girth: the longest side, and once round the other two.
 *
 * @param sides in any order, in one unit
 * @returns in that unit
 * @see a national post's size limits: tests/reference/postage-sizes.test.ts
 * @example lengthAndGirth([ratio(5n), ratio(12n), ratio(8n)]) // 12, 26 and 38
 */
export function lengthAndGirth(sides: Sides): LengthAndGirth {
  const [length, ...others] = longestFirst(sides);
  const girth = ratioProduct(ratio(2n), ratioSum(...others));
  return { length, girth, sum: ratioSum(length, girth) };
}
