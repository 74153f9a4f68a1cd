import { describe, expect, it } from "vitest";
import { sizeEarns } from "#lib/cartons/range/size-earns";
import { plainCost, smallTable } from "./small-tables";

describe("sizeEarns", () => {
  it("is what would be paid more without a size, by hand", () => {
    const table = {
      candidates: ["a", "b", "c"],
      rows: [
        { parcels: 3, values: [2, 5, 7] },
        { parcels: 4, values: [null, 6, 8] },
        { parcels: 1, values: [null, null, 9] },
      ],
      unpackedValue: 50,
    };
    expect(sizeEarns(table, [2, 0, 1])).toEqual([
      { size: 2, parcels: 1, earnedValue: 50 - 9, onlyHere: 1 },
      { size: 0, parcels: 3, earnedValue: 3 * (5 - 2), onlyHere: 0 },
      { size: 1, parcels: 4, earnedValue: 4 * (8 - 6), onlyHere: 0 },
    ]);
  });

  it("is never below zero, and zero for a size that takes nothing", () => {
    for (let seed = 1; seed <= 40; seed++) {
      const table = smallTable(seed);
      const chosen = [...table.candidates.keys()].slice(0, 5);
      for (const { size, parcels, earnedValue } of sizeEarns(table, chosen)) {
        const without = chosen.filter((other) => other !== size);
        expect(earnedValue).toBe(plainCost(table, without) - plainCost(table, chosen));
        expect(earnedValue).toBeGreaterThanOrEqual(0);
        if (parcels === 0) expect(earnedValue).toBe(0);
      }
    }
  });
});
