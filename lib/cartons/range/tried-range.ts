import type { BoundedRange } from "#lib/cartons/range/assignment-bound";
import { type RangeSpace, spaceValue } from "#lib/cartons/range/range-space";

/** So many ranges are tried one by one: some tenths of a second with thousands of rows. */
export const MOST_TRIED = 500;

/**
 * The end of a search where little is open: every range that could still be cheaper is costed, and the best is proven.
 *
 * @param space rows and sizes
 * @param most sizes that may be stocked
 * @param bounded the best range found and what is settled of a cheaper one
 * @returns the best range with its cost as the bound; null where more than `MOST_TRIED` are open
 * @example triedRange(space, 6, assignmentBound(space, 6, first, () => false))
 */
export function triedRange(
  space: RangeSpace,
  most: number,
  { found, settled }: BoundedRange,
): BoundedRange | null {
  const { kept, dropped } = settled;
  const free = space.sizes.filter((size) => !kept.has(size) && !dropped.has(size));
  // A size more never costs more, so that only full ranges are tried.
  const open = Math.min(free.length, most - kept.size);
  if (choices(free.length, open) > MOST_TRIED) return null;
  let best = found;
  for (const more of subsets(free, open)) {
    const chosen = new Set([...kept, ...more]);
    const value = spaceValue(space, chosen);
    if (value < best.value) best = { chosen, value };
  }
  return { found: best, bound: best.value, settled };
}

function choices(of: number, taken: number): number {
  let count = 1;
  for (let each = 1; each <= taken; each++) count *= (of - taken + each) / each;
  return Math.round(count);
}

function subsets(sizes: readonly number[], taken: number): number[][] {
  if (taken === 0) return [[]];
  return sizes.flatMap((size, at) => subsets(sizes.slice(at + 1), taken - 1).map((rest) => [size, ...rest]));
}
