import { describe, expect, it } from "vitest";
import { day, daysBetween } from "#lib/units/day";
import type { ForecastRows } from "#prisma/records/forecast-rows";
import { itemTypePacking } from "#prisma/records/item-type-packing";
import { recipeDifferences } from "#prisma/records/recipe-differences";
import { FIRST_MONDAY, recipe, rows, TODAY } from "./forecast-rows-fixture";

function differencesOf(changes: Partial<ForecastRows>) {
  const all = rows(changes);
  const packings = new Map(all.itemTypes.map(({ id }) => [id, itemTypePacking(all, id, day("2026-11-23"))]));
  const weekOf = (of: typeof TODAY) => Math.floor(daysBetween(FIRST_MONDAY, of) / 7);
  return recipeDifferences(all, packings, { today: TODAY, weeks: 12, weekOf });
}

describe("what today's recipes would have taken more or less", () => {
  it("is nothing while the recipe is the same", () => {
    expect(differencesOf({}).size).toBe(0);
  });

  it("counts steps a piece by the pieces, steps a parcel by the parcels", () => {
    const recipes = [
      recipe("first", { piece: { paper: 10 }, parcel: { tape: 2 } }),
      recipe("second", { piece: { paper: 11 }, parcel: { tape: 5 }, from: "2026-11-20" }),
    ];
    const found = differencesOf({ recipes });
    expect(found.get("paper")).toEqual(new Array(12).fill(3));
    expect(found.get("tape")).toEqual(new Array(12).fill(6));
  });

  it("moves a carton that is no longer listed to the one that is, and leaves one that is", () => {
    const cartons = (supplyId: string) => [{ upTo: 4, supplyId }];
    const recipes = [
      recipe("first", { cartons: cartons("carton-8") }),
      recipe("second", { cartons: cartons("carton-12"), from: "2026-11-20" }),
    ];
    const found = differencesOf({ recipes });
    expect(found.get("carton-8")).toEqual(new Array(12).fill(-2));
    expect(found.get("carton-12")).toEqual(new Array(12).fill(2));
    const kept = [recipes[0], recipe("second", { from: "2026-11-20" })].filter((each) => each !== undefined);
    expect(differencesOf({ recipes: kept }).get("carton-8")).toBeUndefined();
  });

  it("takes out what went into an item type that is out of use", () => {
    const found = differencesOf({ itemTypes: [] });
    expect(found.get("paper")).toEqual(new Array(12).fill(-30));
    expect(found.get("tape")).toEqual(new Array(12).fill(-4));
    expect(found.get("carton-8")).toEqual(new Array(12).fill(-2));
  });

  it("leaves alone what was packed without a recipe", () => {
    const packed = rows().packed.map((row) => ({ ...row, style: "mixed" }));
    expect(differencesOf({ packed }).size).toBe(0);
  });
});
