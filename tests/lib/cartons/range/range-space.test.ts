import { describe, expect, it } from "vitest";
import { paidBy, rangeSpace, spaceValue } from "#lib/cartons/range/range-space";
import { everyChoice, plainCost, smallTable } from "./small-tables";

describe("rangeSpace", () => {
  it("multiplies rows out and sorts their sizes by cost, without those left out", () => {
    const rows = [{ parcels: 3, values: [5, null, 2, 4] }];
    const space = rangeSpace({ candidates: ["a", "b", "c", "d"], rows, unpackedValue: 9 }, new Set([3]));
    expect(space.sizes).toEqual([0, 1, 2]);
    expect(space.rows).toEqual([
      {
        unpacked: 27,
        options: [
          { size: 2, total: 6 },
          { size: 0, total: 15 },
        ],
      },
    ]);
    expect(space.rows.map((row) => paidBy(row, new Set([0])))).toEqual([15]);
    expect(space.rows.map((row) => paidBy(row, new Set([1])))).toEqual([27]);
  });

  it("costs each choice as the table does", () => {
    for (let seed = 1; seed <= 20; seed++) {
      const table = smallTable(seed);
      const space = rangeSpace(table, new Set());
      for (const chosen of everyChoice(table.candidates.length, 3)) {
        expect(spaceValue(space, new Set(chosen))).toBe(plainCost(table, chosen));
      }
    }
  });
});
