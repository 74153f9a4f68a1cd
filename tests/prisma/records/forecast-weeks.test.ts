import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { day } from "#lib/units/day";
import { forecastWeeks } from "#prisma/records/forecast-weeks";
import { forecastOn, forecastPast } from "#prisma/records/forecasts";
import { recordParcel } from "#prisma/records/parcels";
import { parcelBody, type ShopFixture, shopFixture } from "./shop-fixture";

const TODAY = day("2026-03-25");

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
});
afterEach(() => shop.close());

describe("past weeks of a kept forecast", () => {
  it("are those of each subject, and none where there is no forecast", async () => {
    for (const packedOn of ["2026-03-02", "2026-03-03", "2026-03-12"]) {
      const by = { device: "desk", now: `${packedOn}T15:00:00.000Z` } as const;
      await recordParcel(shop.db, parcelBody(packedOn, { packedOn }), by);
    }
    const kept = await forecastOn(shop.db, TODAY);
    if (kept === null) throw new RangeError("the shop is not there");
    const weeksOf = await forecastWeeks(shop.db, kept.asOf);
    expect(weeksOf({ kind: "shop", id: "shop" }).map((week) => week.recorded)).toEqual([2, 1, 0]);
    expect(kept.supplies.size).toBeGreaterThan(0);
    for (const id of kept.supplies.keys()) {
      const subject = { kind: "supply", id } as const;
      expect(weeksOf(subject)).toEqual((await forecastPast(shop.db, TODAY, subject))?.weeks);
    }
    expect(weeksOf({ kind: "supply", id: "nothing" })).toEqual([]);
  });
});
