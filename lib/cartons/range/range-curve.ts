import { type CartonRange, type RangeMeans, rangeOf } from "#lib/cartons/range/range-of";
import type { RangeTable } from "#lib/cartons/range/range-table";

/** The best range with up to so many sizes. */
export type CurvePoint = CartonRange & { readonly most: number };

/**
 * What the best ranges of one, two and more sizes cost: each begins with the one before, so that more sizes never cost
 * more, proven or not.
 *
 * @param table what parcels cost in each candidate
 * @param most sizes of the largest range, a whole number from 1
 * @param means solver, time for all ranges together, clock
 * @param told called after each range, in order; waited for, so that it may let others work
 * @returns the ranges for 1 to so many sizes
 * @throws RangeError for a table that makes no sense or a number of sizes that is not as said
 * @example (await rangeCurve(table, 10, means, () => undefined)).map(({ value }) => value)
 */
export async function rangeCurve(
  table: RangeTable,
  most: number,
  means: RangeMeans,
  told: (point: CurvePoint) => Promise<void> | void,
): Promise<CurvePoint[]> {
  if (!(Number.isInteger(most) && most >= 1)) {
    throw new RangeError(`rangeCurve requires a whole number of sizes from 1, got ${most}`);
  }
  const until = means.now() + means.seconds;
  const points: CurvePoint[] = [];
  for (let sizes = 1; sizes <= most; sizes++) {
    // What earlier ranges left of their time goes to later ones.
    const seconds = Math.max(0, until - means.now()) / (most - sizes + 1);
    const range = await rangeOf(table, sizes, { ...means, seconds }, points.at(-1)?.chosen);
    const point = { ...range, most: sizes };
    points.push(point);
    await told(point);
  }
  return points;
}
