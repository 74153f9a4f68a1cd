import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type NestedSize, nestedSizes } from "#lib/cartons/range/nested-sizes";

/** The cost of a given choice by the rule itself: each thing in the smallest stocked size that is not smaller. */
function costOf(sizes: readonly NestedSize[], chosen: readonly number[]): number | null {
  let cost = 0;
  for (const { size, count } of sizes) {
    const into = sizes.find((each) => chosen.includes(each.size) && each.size >= size);
    if (count > 0 && into === undefined) return null;
    cost += count * (into?.unitCost ?? 0);
  }
  return cost;
}

/** Every choice of up to so many sizes, tried one by one. */
function cheapestOf(sizes: readonly NestedSize[], most: number): number {
  let best = Number.POSITIVE_INFINITY;
  for (let bits = 0; bits < 2 ** sizes.length; bits += 1) {
    const chosen = sizes.flatMap(({ size }, at) => (Math.floor(bits / 2 ** at) % 2 === 1 ? [size] : []));
    const cost = chosen.length <= most ? costOf(sizes, chosen) : null;
    if (cost !== null) best = Math.min(best, cost);
  }
  return best;
}

const anySizes = fc
  .uniqueArray(fc.integer({ min: 1, max: 50 }), { minLength: 1, maxLength: 8 })
  .chain((sizes) =>
    fc.tuple(
      ...sizes
        .toSorted((a, b) => a - b)
        .map((size) => fc.record({ size: fc.constant(size), count: fc.nat(20), unitCost: fc.nat(100) })),
    ),
  );

describe("nestedSizes", () => {
  it("is as cheap as the best of all choices, and costs what it says", () => {
    fc.assert(
      fc.property(anySizes, fc.integer({ min: 1, max: 9 }), (sizes, most) => {
        const { cost, chosen } = nestedSizes(sizes, most);
        expect(cost).toBe(cheapestOf(sizes, most));
        expect(costOf(sizes, chosen)).toBe(cost);
        expect(chosen.length).toBeLessThanOrEqual(most);
      }),
    );
  });

  it("stocks the fewest sizes where more save nothing", () => {
    const sizes = [1, 2, 3].map((size) => ({ size, count: 5, unitCost: 7 }));
    expect(nestedSizes(sizes, 3)).toEqual({ cost: 105, chosen: [3] });
  });

  it("stocks nothing where nothing is needed", () => {
    expect(nestedSizes([{ size: 2, count: 0, unitCost: 4 }], 1)).toEqual({ cost: 0, chosen: [] });
  });

  it.each([
    [[], 1],
    [[{ size: 1, count: 1, unitCost: 1 }], 0],
    [
      [
        { size: 2, count: 1, unitCost: 1 },
        { size: 2, count: 1, unitCost: 1 },
      ],
      1,
    ],
    [[{ size: 1, count: -1, unitCost: 1 }], 1],
    [[{ size: 1, count: 1, unitCost: Number.NaN }], 1],
  ])("refuses %o with %s", (sizes, most) => {
    expect(() => nestedSizes(sizes, most)).toThrow(RangeError);
  });
});
