import { describe, expect, it } from "vitest";
import { interchangedRange } from "#lib/cartons/range/interchanged-range";
import { rangeSpace } from "#lib/cartons/range/range-space";
import { cheapestOf, plainCost, smallTable } from "./small-tables";

describe("interchangedRange", () => {
  it("ends where no addition and no exchange of one size saves, and knows what it costs", () => {
    let best = 0;
    for (let seed = 1; seed <= 100; seed++) {
      const table = smallTable(seed);
      const space = rangeSpace(table, new Set());
      const { chosen, value } = interchangedRange(space, 3, new Set());
      const sizes = [...chosen];
      expect(value).toBe(plainCost(table, sizes));
      expect(sizes.length).toBeLessThanOrEqual(3);
      for (const other of neighbours(space.sizes, sizes, 3)) {
        expect(plainCost(table, other)).toBeGreaterThanOrEqual(value);
      }
      if (value === cheapestOf(table, 3)) best += 1;
    }
    // Exchange of one size is known to find the best of small tables nearly always.
    expect(best).toBeGreaterThanOrEqual(90);
  });

  it("begins with the sizes given and never ends dearer", () => {
    const table = smallTable(7);
    const space = rangeSpace(table, new Set());
    const first = new Set(space.sizes.slice(0, 1));
    expect(interchangedRange(space, 1, first).value).toBeLessThanOrEqual(plainCost(table, [...first]));
  });
});

/** One size more, or one in the place of another. */
function neighbours(all: readonly number[], sizes: readonly number[], most: number): number[][] {
  return all.flatMap((coming) => [
    ...(sizes.length < most ? [[...sizes, coming]] : []),
    ...sizes.map((going) => [...sizes.filter((size) => size !== going), coming]),
  ]);
}
