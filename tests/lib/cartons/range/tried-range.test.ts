import { describe, expect, it } from "vitest";
import { rangeSpace } from "#lib/cartons/range/range-space";
import { MOST_TRIED, triedRange } from "#lib/cartons/range/tried-range";
import { cheapestOf, plainCost, smallTable } from "./small-tables";

const NOTHING = { kept: new Set<number>(), dropped: new Set<number>() };
const nothingStocked = { chosen: new Set<number>(), value: Number.POSITIVE_INFINITY };

describe("triedRange", () => {
  it("finds the best of all choices where nothing is settled, and proves it", () => {
    for (let seed = 1; seed <= 60; seed++) {
      const table = smallTable(seed);
      const bounded = { found: nothingStocked, bound: 0, settled: NOTHING };
      const tried = triedRange(rangeSpace(table, new Set()), 3, bounded);
      expect(tried?.found.value).toBe(cheapestOf(table, 3));
      expect(tried?.bound).toBe(cheapestOf(table, 3));
      expect(plainCost(table, [...(tried?.found.chosen ?? [])])).toBe(cheapestOf(table, 3));
    }
  });

  it("keeps to what is settled, and to the range found where no open one is cheaper", () => {
    const table = smallTable(2);
    const space = rangeSpace(table, new Set());
    const settled = { kept: new Set([0]), dropped: new Set([1]) };
    const tried = triedRange(space, 2, { found: nothingStocked, bound: 0, settled });
    expect(tried?.found.chosen.has(0)).toBe(true);
    expect(tried?.found.chosen.has(1)).toBe(false);
    const found = { chosen: new Set([1]), value: 0 };
    expect(triedRange(space, 2, { found, bound: 0, settled })).toMatchObject({ found, bound: 0 });
  });

  it("tries no more than some hundreds", () => {
    const sizes = (count: number) => ({ sizes: Array.from({ length: count }, (_, at) => at), rows: [] });
    const bounded = { found: nothingStocked, bound: 0, settled: NOTHING };
    // 10 over 5 is 252, 12 over 6 is 924.
    expect(MOST_TRIED).toBe(500);
    expect(triedRange(sizes(10), 5, bounded)).not.toBeNull();
    expect(triedRange(sizes(12), 6, bounded)).toBeNull();
  });
});
