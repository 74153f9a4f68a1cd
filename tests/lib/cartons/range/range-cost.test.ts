import { describe, expect, it } from "vitest";
import { rangeCost } from "#lib/cartons/range/range-cost";
import { everyChoice, plainCost, smallTable } from "./small-tables";

const table = {
  candidates: ["a", "b", "c"],
  rows: [
    { parcels: 2, values: [3, 3, 1] },
    { parcels: 5, values: [null, 7, null] },
    { parcels: 1, values: [null, null, null] },
  ],
  unpackedValue: 10,
};

describe("rangeCost", () => {
  it("puts each parcel into the cheapest stocked size, the first of equal ones, and counts what fits none", () => {
    expect(rangeCost(table, [0, 1])).toEqual({
      value: 2 * 3 + 5 * 7 + 10,
      unpackedParcels: 1,
      parcels: [2, 5],
    });
    expect(rangeCost(table, [2, 0])).toEqual({ value: 2 * 1 + 50 + 10, unpackedParcels: 6, parcels: [2, 0] });
    expect(rangeCost(table, [])).toEqual({ value: 80, unpackedParcels: 8, parcels: [] });
  });

  it("agrees with a sum over parcels by another way of writing it", () => {
    for (let seed = 1; seed <= 30; seed++) {
      const small = smallTable(seed);
      const parcels = small.rows.reduce((sum, row) => sum + row.parcels, 0);
      for (const chosen of everyChoice(small.candidates.length, 4)) {
        const cost = rangeCost(small, chosen);
        expect(cost.value).toBe(plainCost(small, chosen));
        expect(cost.parcels.reduce((sum, each) => sum + each, cost.unpackedParcels)).toBe(parcels);
      }
    }
  });

  it("refuses a size that is no candidate or comes twice", () => {
    expect(() => rangeCost(table, [3])).toThrow(RangeError);
    expect(() => rangeCost(table, [1, 1])).toThrow(RangeError);
  });
});
