import { describe, expect, it } from "vitest";
import { assignmentBound } from "#lib/cartons/range/assignment-bound";
import { rangeSpace } from "#lib/cartons/range/range-space";
import { cheapestOf, plainCost, smallTable } from "./small-tables";

describe("assignmentBound", () => {
  it("holds the least cost between its bound and its range, and mostly closes on it without a solver", () => {
    let proven = 0;
    for (let seed = 1; seed <= 200; seed++) {
      const table = smallTable(seed);
      const space = rangeSpace(table, new Set());
      const most = 1 + (seed % 4);
      // Begins with nothing stocked, so that the range is its own.
      const first = { chosen: new Set<number>(), value: plainCost(table, []) };
      const { found, bound } = assignmentBound(space, most, first, () => false);
      const best = cheapestOf(table, most);
      expect(bound).toBeLessThanOrEqual(best);
      expect(found.value).toBeGreaterThanOrEqual(best);
      expect(found.value).toBe(plainCost(table, [...found.chosen]));
      expect(found.chosen.size).toBeLessThanOrEqual(most);
      if (bound === found.value) proven += 1;
    }
    expect(proven).toBeGreaterThan(180);
  });

  it("proves something in the one turn that it takes when time is up", () => {
    const table = smallTable(3);
    const first = { chosen: new Set<number>(), value: plainCost(table, []) };
    const { bound } = assignmentBound(rangeSpace(table, new Set()), 2, first, () => true);
    expect(bound).toBeLessThanOrEqual(cheapestOf(table, 2));
    expect(bound).toBeGreaterThanOrEqual(plainCost(table, [...table.candidates.keys()]));
  });
});
