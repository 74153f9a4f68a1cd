import { describe, expect, it } from "vitest";
import { checkedTable, type RangeTable } from "#lib/cartons/range/range-table";

const table: RangeTable = {
  candidates: ["8 in cube", "10 in cube"],
  rows: [{ parcels: 3, values: [null, 120] }],
  unpackedValue: 900,
};

describe("checkedTable", () => {
  it("gives a sound table back, also one without rows", () => {
    expect(checkedTable(table)).toBe(table);
    expect(checkedTable({ ...table, rows: [] }).rows).toEqual([]);
  });

  it.each<[string, Partial<RangeTable>, RegExp]>([
    ["the same candidate twice", { candidates: ["a", "a"] }, /candidates that differ/],
    ["no parcels in a row", { rows: [{ parcels: 0, values: [1, 2] }] }, /parcels in row 0, got 0/],
    ["a value too few", { rows: [{ parcels: 1, values: [1] }] }, /2 values in row 0, got 1/],
    ["a value below zero", { rows: [{ parcels: 1, values: [1, -1] }] }, /got -1 for 10 in cube in row 0/],
    ["a value that is not whole", { rows: [{ parcels: 1, values: [0.5, 1] }] }, /got 0.5 for 8 in cube/],
    ["a packed parcel dearer than an unpacked one", { unpackedValue: 100 }, /unpacked one of 100, got 120/],
    ["an unpacked value that is no number", { rows: [], unpackedValue: Number.NaN }, /stays exact/],
    ["sums that would not be exact", { rows: [{ parcels: 2e13, values: [1, 1] }] }, /stays exact/],
  ])("refuses %s", (_, change, message) => {
    expect(() => checkedTable({ ...table, ...change })).toThrow(message);
  });
});
