import { describe, expect, it } from "vitest";
import { triedSupplies } from "#app/paper-or-bubble/tried-supplies.ts";
import { plainCost } from "../../lib/cushioning/small-ways";
import { SUPPLIES, supplyOfKind } from "./small-answer";

const kind = (parcels: number, ...takes: readonly Readonly<Record<string, number>>[]) => ({
  parcels,
  costs: takes.map((each, at) => plainCost(at === 0 ? "paper" : "bubble", 100, each)),
});
const ids = (kinds: readonly ReturnType<typeof kind>[], supplies = SUPPLIES) =>
  triedSupplies(kinds, supplies).map(({ id }) => id);

describe("the supplies whose price may turn the choice", () => {
  it("are those of which the ways take more or less, by the difference over all parcels", () => {
    // 3 x 4 of bubble and 2 x 5 of sheets differ
    const mugs = kind(3, { bubble: 1 }, { bubble: 5 });
    const tiles = kind(2, { sheets: 6, bubble: 2 }, { sheets: 1, bubble: 2 });
    expect(ids([mugs, tiles])).toEqual(["bubble", "sheets"]);
    expect(ids([mugs, { ...tiles, parcels: 9 }])).toEqual(["sheets", "bubble"]);
  });

  it("are none that all ways take alike, and neither tape nor cartons", () => {
    expect(ids([kind(5, { sheets: 2, tape: 6 }, { sheets: 2, tape: 9 })])).toEqual([]);
    // The one takes no carton and the other one.
    expect(ids([kind(5, { carton: 0 }, { carton: 1 })])).toEqual([]);
  });

  it("are none of a parcel with one way alone", () => {
    expect(ids([kind(5, { bubble: 4 })])).toEqual([]);
  });

  it("are four at most", () => {
    const many = Array.from({ length: 6 }, (_, at) => supplyOfKind(`film ${at}`, "bubble"));
    const takes = Object.fromEntries(many.map(({ id }, at) => [id, at + 1]));
    expect(ids([kind(1, takes, {})], many)).toEqual(["film 5", "film 4", "film 3", "film 2"]);
  });
});
