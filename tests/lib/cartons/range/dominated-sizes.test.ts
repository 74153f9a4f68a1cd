import { describe, expect, it } from "vitest";
import { dominatedSizes } from "#lib/cartons/range/dominated-sizes";
import { cheapestOf, smallTable } from "./small-tables";

describe("dominatedSizes", () => {
  it("names a size that another beats on every parcel, and of equal ones all but the first", () => {
    const rows = [
      { parcels: 1, values: [4, 5, 4, null, 9] },
      { parcels: 2, values: [null, null, null, null, 3] },
    ];
    expect(dominatedSizes({ candidates: ["a", "b", "c", "d", "e"], rows, unpackedValue: 9 })).toEqual([
      { size: 1, by: 0 },
      { size: 2, by: 0 },
      { size: 3, by: 0 },
    ]);
  });

  it("keeps a size that is never the cheapest but the best compromise", () => {
    const rows = [
      { parcels: 1, values: [1, 3, 9] },
      { parcels: 1, values: [9, 3, 1] },
    ];
    const table = { candidates: ["a", "b", "c"], rows, unpackedValue: 9 };
    expect(dominatedSizes(table)).toEqual([]);
    expect(cheapestOf(table, 1)).toBe(6);
  });

  it("leaves the least cost as it is when they go", () => {
    let dominated = 0;
    for (let seed = 1; seed <= 100; seed++) {
      const table = smallTable(seed);
      const gone = dominatedSizes(table).map(({ size }) => size);
      dominated += gone.length;
      for (const { by } of dominatedSizes(table)) expect(gone).not.toContain(by);
      const stays = (_: unknown, at: number) => !gone.includes(at);
      const left = {
        ...table,
        candidates: table.candidates.filter(stays),
        rows: table.rows.map((row) => ({ ...row, values: row.values.filter(stays) })),
      };
      for (const most of [1, 2, 3]) expect(cheapestOf(left, most)).toBe(cheapestOf(table, most));
    }
    expect(dominated).toBeGreaterThan(20);
  });
});
