import { describe, expect, it } from "vitest";
import { dearestAsUnpacked } from "#app/cartons/range/dearest-as-unpacked.ts";
import { QUICK_EFFORT } from "#lib/cartons/fit/fit-effort";
import { costTable } from "#lib/cartons/range/cost-table";
import { carton, IN, MUG, MUG_TERMS } from "../../../lib/cartons/choice/mug-bench";

const clearance = { wallsUm: IN, baseUm: IN, topUm: IN };
const tableOf = (cubes: readonly number[]) =>
  dearestAsUnpacked((unpackedValue) =>
    costTable(
      [{ load: MUG, parcels: 2, clearance }],
      cubes.map((side) => carton(`${side}`, [side, side, side], 10 * side)),
      { ...MUG_TERMS, clearance, effort: QUICK_EFFORT, unpackedValue },
    ),
  ).table;

describe("what a parcel counts that no size holds", () => {
  it("is ten times the dearest that is held", () => {
    const { rows, unpackedValue } = tableOf([8, 12, 5]);
    const held = rows.flatMap(({ values }) => values.filter((value) => value !== null));
    expect(held).toHaveLength(2);
    expect(unpackedValue).toBeCloseTo(10 * Math.max(...held), 6);
  });

  it("is above zero where nothing is held at all", () => {
    expect(tableOf([5]).unpackedValue).toBeGreaterThan(0);
  });
});
