import { describe, expect, it } from "vitest";
import { cartonCost } from "#lib/cartons/cost/carton-cost";
import type { OfferedCarton, PackedLoad } from "#lib/cartons/cost/packed-load";
import { QUICK_EFFORT } from "#lib/cartons/fit/fit-effort";
import { type Sides, sidesBlock } from "#lib/cartons/fit/sides";
import { costTable, type RangeTerms } from "#lib/cartons/range/cost-table";
import { blockVolume } from "#lib/packing/block";
import { USUAL_LEGS } from "#lib/packing/carton-tape";

const MM = 1_000;
const block = (...[length, width, height]: Sides) => sidesBlock([length * MM, width * MM, height * MM]);
const load = (massMg: number, ...pieces: Sides[]): PackedLoad => ({
  pieces: pieces.map((sides) => ({ block: block(...sides), upright: false })),
  ml: pieces.reduce((sum, sides) => sum + blockVolume(block(...sides)), 0),
  massMg,
});
const carton = (id: string, ...sides: Sides): OfferedCarton => ({
  id,
  inside: block(...sides),
  boardUm: 4_000,
  massMg: 200_000,
  value: 500_000,
});
const SMALL = carton("small", 150, 150, 150);
const LARGE = carton("large", 300, 200, 200);
const terms: RangeTerms = {
  fill: { mlPerUnit: 800, massMg: 27_000, value: 70_000 },
  tape: { pattern: "single", legs: USUAL_LEGS, factor: 1, massMgPerUm: 2e-3, valuePerUm: 0.3 },
  bulgeUm: 0,
  postage: (massMg) => 400 + Math.ceil(massMg / 1e6) * 50,
  clearance: { wallsUm: 10 * MM, baseUm: 10 * MM, topUm: 10 * MM },
  effort: QUICK_EFFORT,
  unpackedValue: 100_000_000,
};

describe("costTable", () => {
  it("leaves a load the clearance of its own, where it has one", () => {
    const mug = load(400_000, [150, 130, 130]);
    const none = { wallsUm: 0, baseUm: 0, topUm: 0 };
    const rows = [
      { load: mug, parcels: 1 },
      { load: mug, parcels: 1, clearance: none },
    ].map((each) => costTable([each], [SMALL, LARGE], terms).table.rows[0]?.values);
    expect(rows.map((values) => values?.map((value) => value !== null))).toEqual([
      [false, true],
      [true, true],
    ]);
  });

  it("has the cost of each load in each carton that holds it with its clearance, and null in others", () => {
    const mug = load(400_000, [130, 130, 130]);
    const large = load(400_000, [131, 130, 130]);
    const { table } = costTable(
      [
        { load: mug, parcels: 7 },
        { load: large, parcels: 2 },
      ],
      [SMALL, LARGE],
      terms,
    );
    const value = (of: PackedLoad, into: OfferedCarton) => Math.round(cartonCost(of, into, terms).totalValue);
    expect(table).toEqual({
      candidates: ["small", "large"],
      rows: [
        { parcels: 7, values: [value(mug, SMALL), value(mug, LARGE)] },
        { parcels: 2, values: [null, value(large, LARGE)] },
      ],
      unpackedValue: 100_000_000,
    });
  });

  it("merges loads of equal costs, their pieces in whatever order", () => {
    const one = { load: load(300_000, [100, 60, 50], [80, 60, 50]), parcels: 3 };
    const turned = { load: load(300_000, [80, 60, 50], [100, 60, 50]), parcels: 4 };
    const heavy = { load: load(900_000, [80, 60, 50], [100, 60, 50]), parcels: 1 };
    const { table } = costTable([one, turned, heavy], [SMALL, LARGE], terms);
    expect(table.rows.map(({ parcels }) => parcels)).toEqual([7, 1]);
  });

  it("counts a carton without postage as not fitting where another has some, and says so", () => {
    const mug = { load: load(400_000, [100, 100, 100]), parcels: 5 };
    const { table, noPostage } = costTable([mug], [SMALL, LARGE], {
      ...terms,
      postage: (_, { um: [first] }) => (first > 200 * MM ? null : 500),
    });
    expect(noPostage).toEqual([0, 5]);
    expect(table.rows[0]?.values[1]).toBeNull();
    const unknown = costTable([mug], [SMALL, LARGE], { ...terms, postage: () => null });
    expect(unknown.noPostage).toEqual([0, 0]);
    expect(unknown.table.rows[0]?.values).not.toContain(null);
  });

  it("counts what is not proven as not fitting, and says for how many parcels", () => {
    // Bricks of 1 x 2 x 4 fill a cube of 6 by volume, and a hair's breadth of search cannot tell that they do not fit.
    const full = {
      load: load(900_000, ...Array.from({ length: 27 }, (): Sides => [20, 40, 80])),
      parcels: 6,
    };
    const tight = carton("tight", 140, 140, 140);
    const { notProven, table } = costTable([full], [tight, LARGE], {
      ...terms,
      effort: { shuffles: 0, groups: 0, looks: 1 },
    });
    expect(notProven).toEqual([6, 0]);
    expect(table.rows[0]?.values[0]).toBeNull();
    expect(table.rows[0]?.values[1]).toBeGreaterThan(0);
  });

  it("refuses an unpacked value below what a packed parcel costs", () => {
    const mug = { load: load(400_000, [100, 100, 100]), parcels: 5 };
    expect(() => costTable([mug], [SMALL], { ...terms, unpackedValue: 1 })).toThrow(/unpacked one of 1/);
  });
});
