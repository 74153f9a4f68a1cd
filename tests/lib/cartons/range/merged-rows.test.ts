import { describe, expect, it } from "vitest";
import { mergedRows } from "#lib/cartons/range/merged-rows";
import { everyChoice, plainCost, smallTable } from "./small-tables";

describe("mergedRows", () => {
  it("adds the parcels of equal rows and keeps others apart, null apart from zero", () => {
    expect(
      mergedRows([
        { parcels: 2, values: [5, null] },
        { parcels: 1, values: [5, 0] },
        { parcels: 4, values: [5, null] },
      ]),
    ).toEqual([
      { parcels: 6, values: [5, null] },
      { parcels: 1, values: [5, 0] },
    ]);
  });

  it("changes the cost of no range", () => {
    for (let seed = 1; seed <= 20; seed++) {
      const table = smallTable(seed);
      const twice = [...table.rows, ...table.rows.toReversed()];
      const merged = { ...table, rows: mergedRows(twice) };
      expect(merged.rows.length).toBeLessThanOrEqual(table.rows.length);
      for (const chosen of everyChoice(table.candidates.length, 3)) {
        expect(plainCost(merged, chosen)).toBe(2 * plainCost(table, chosen));
      }
    }
  });
});
