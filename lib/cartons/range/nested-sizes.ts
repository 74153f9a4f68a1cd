/** A size that things need, how many need it, and what one carton of this size costs. */
export type NestedSize = { readonly size: number; readonly count: number; readonly unitCost: number };

/** The sizes to stock and what all things then cost. */
export type NestedChoice = { readonly cost: number; readonly chosen: readonly number[] };

type Plan = { readonly cost: number; readonly chosen: readonly number[] };

/**
 * Which sizes to stock where each thing goes into the smallest stocked size that is not smaller than it: exact, by a
 * dynamic programme over where one stocked size ends and the next begins. Sizes have one measure here; cartons with
 * three are another question.
 *
 * @param sizes needed, smallest first, each once; counts and costs from zero
 * @param most sizes that may be stocked, a whole number from 1
 * @returns the cheapest choice; the fewest sizes where several cost the same
 * @throws RangeError if there is no size, sizes do not rise, or a number is not as said
 * @see dynamic programme for an ordered assortment: tests/reference/carton-keeping.test.ts
 * @example nestedSizes([2, 3].map((size) => ({ size, count: 1, unitCost: size })), 1) // { cost: 6, chosen: [3] }
 */
export function nestedSizes(sizes: readonly NestedSize[], most: number): NestedChoice {
  checkSizes(sizes, most);
  const countsBefore = [0];
  for (const { count } of sizes) countsBefore.push((countsBefore.at(-1) ?? 0) + count);
  /** The cheapest plan for the first so many sizes, with up to as many stocked as rounds were made. */
  let plans: readonly (Plan | null)[] = [{ cost: 0, chosen: [] }, ...sizes.map(() => null)];
  for (let stocked = 1; stocked <= Math.min(most, sizes.length); stocked += 1) {
    plans = plans.map((fewer, end) => {
      const candidates = plans.slice(0, end).map((before, start) => {
        const largest = sizes[end - 1];
        if (before === null || largest === undefined) return null;
        const served = (countsBefore[end] ?? 0) - (countsBefore[start] ?? 0);
        return {
          cost: before.cost + served * largest.unitCost,
          chosen: [...before.chosen, largest.size],
        };
      });
      return [fewer, ...candidates].reduce(cheaper, null);
    });
  }
  // What nobody needs may stay unstocked at the top, though it may be stocked for what is smaller.
  const needed = sizes.findLastIndex(({ count }) => count > 0) + 1;
  const best = plans.slice(needed).reduce(cheaper, null);
  if (best === null) throw new RangeError("nestedSizes requires at least one size, got none");
  return best;
}

function cheaper(best: Plan | null, other: Plan | null): Plan | null {
  if (best === null || other === null) return best ?? other;
  return other.cost < best.cost ? other : best;
}

function checkSizes(sizes: readonly NestedSize[], most: number): void {
  if (!(Number.isInteger(most) && most >= 1 && sizes.length >= 1)) {
    throw new RangeError(
      `nestedSizes requires sizes and at least one to stock, got ${sizes.length} and ${most}`,
    );
  }
  for (const [at, { size, count, unitCost }] of sizes.entries()) {
    const before = sizes[at - 1]?.size ?? Number.NEGATIVE_INFINITY;
    if (!(size > before && count >= 0 && unitCost >= 0 && Number.isFinite(count + unitCost))) {
      throw new RangeError(
        `nestedSizes requires rising sizes, and counts and costs from zero, got ${size}, ${count}, ${unitCost}`,
      );
    }
  }
}
