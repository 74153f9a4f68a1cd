import { describe, expect, it } from "vitest";
import { parcelForecast } from "#lib/forecast/shop/parcel-forecast";
import { COMING_WEEKS, shopGround } from "#lib/forecast/shop/shop-ground";
import { addDays } from "#lib/units/day";
import { countSeries } from "../seeded-counts";
import { itemType, RUNNING_WEEK, shopHistory, steady } from "./shop-history-fixture";

const parcelsOf = (...question: Parameters<typeof shopHistory>) =>
  parcelForecast(shopGround(shopHistory(...question)), 0.95);
const WEEKS = 30;

describe("forecast of the shop's parcels", () => {
  it("expects what all item types' parcels come to, not their pieces", () => {
    const mug = itemType("mug", steady(WEEKS, 12), { parcels: steady(WEEKS, 4) });
    const found = parcelsOf([mug, itemType("vase", steady(WEEKS, 3))]);
    expect(found?.coming.path.perWeek).toHaveLength(COMING_WEEKS);
    for (const parcels of found?.coming.path.perWeek ?? []) expect(Math.abs(parcels - 7)).toBeLessThan(0.7);
    expect(found?.coming).toMatchObject({ weeksSeen: WEEKS, guessedShare: 0, likeId: null });
    expect(found?.coming.spread).toMatchObject({ perUse: 1, whole: true });
    expect(found?.past.horizonWeeks).toBe(3);
  });

  it("doubles in a coming week with an event of 100 % more for all, by half for half of the trade", () => {
    const types = [itemType("mug", steady(WEEKS, 10)), itemType("vase", steady(WEEKS, 10))];
    const event = (itemTypeIds: readonly string[]) => ({
      id: "market",
      name: "Market",
      fromDay: addDays(RUNNING_WEEK, 7),
      toDay: addDays(RUNNING_WEEK, 13),
      upliftPercent: 100,
      itemTypeIds,
    });
    const timesOf = (itemTypeIds: readonly string[]) => {
      const [usual = 0, busy = 0] =
        parcelsOf(types, { events: [event(itemTypeIds)] })?.coming.path.perWeek ?? [];
      return busy / usual;
    };
    expect(timesOf([])).toBeCloseTo(2, 9);
    expect(timesOf(["mug"])).toBeCloseTo(1.5, 9);
  });

  it("looks back at sums of three weeks, each with a band", () => {
    const { said = [], tried = [] } =
      parcelsOf([itemType("mug", countSeries(3, { weeks: WEEKS, mean: 9 }))])?.past ?? {};
    expect(said).toHaveLength(WEEKS - 4 - 2);
    expect(tried.length).toBeGreaterThan(3);
    for (const { low, high } of said) expect(low).toBeLessThan(high);
  });

  it("is none where nothing was ever sent, and where there is no item type", () => {
    expect(parcelsOf([itemType("mug", steady(WEEKS, 0))])).toBeNull();
    expect(parcelsOf([])).toBeNull();
  });
});
