import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { forecastRows } from "#prisma/records/forecast-rows";
import type { Recorder } from "#prisma/records/ledger";
import { voidParcel } from "#prisma/records/parcel-corrections";
import { recordParcel } from "#prisma/records/parcels";
import { shopOf } from "#prisma/records/shop";
import { saveOffer, saveSupplier } from "#prisma/records/suppliers";
import { parcelBody, type ShopFixture, shopFixture } from "./shop-fixture";

const UNTIL = day("2026-03-16");
const BY: Recorder = { device: "desk", now: "2026-03-20T12:00:00.000Z" };

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
});
afterEach(() => shop.close());

async function rowsNow() {
  const found = await shopOf(shop.db);
  if (found === null) throw new TypeError("the fixture's shop is set up");
  return forecastRows(shop.db, found, UNTIL);
}

describe("what a forecast is made from", () => {
  it("is parcels before the day, summed over zones, without unusual and void ones", async () => {
    const mugs = (pieces: number) => [{ itemTypeId: "mug", pieces }];
    await recordParcel(shop.db, parcelBody("one", { pieces: mugs(2) }), BY);
    await recordParcel(shop.db, parcelBody("two", { pieces: mugs(3), zoneId: null }), BY);
    await recordParcel(shop.db, parcelBody("odd", { pieces: mugs(40), unusual: true }), BY);
    await recordParcel(shop.db, parcelBody("gone", { pieces: mugs(5) }), BY);
    await voidParcel(shop.db, "gone", "undone", BY);
    await recordParcel(shop.db, parcelBody("later", { packedOn: UNTIL }), BY);
    const { packed, sizes, supplies, firstDay } = await rowsNow();
    expect(packed.filter((row) => row.pieces > 0)).toEqual([
      { day: "2026-03-10", itemTypeId: "mug", style: "paper", cartonId: "carton-8", parcels: 2, pieces: 5 },
    ]);
    expect(sizes.get("mug")).toEqual({ times: 2, pieces: 5, squares: 13 });
    expect(firstDay).toBe("2026-03-10");
    const paper = supplies.find((supply) => supply.id === "paper");
    expect(paper?.useByDay).toEqual([{ day: "2026-03-10", amount: amountOfUnits(14) }]);
  });

  it("is the lead times of those who offer a supply", async () => {
    const supplier = { deliveryMinor: 0, freeDeliveryMinor: null, note: null };
    const offer = { supplyId: "paper", pack: "bundle", packTyped: "100", priceMinor: null, breaks: [] };
    for (const [id, leadTimeDays, retired] of [
      ["near", 4, false],
      ["far", 11, false],
      ["closed", 1, true],
    ] as const) {
      await saveSupplier(shop.db, { id, name: id, leadTimeDays, retired, ...supplier });
      const packAmount = amountOfUnits(100);
      await saveOffer(shop.db, { id: `${id}-offer`, supplierId: id, packAmount, retired: false, ...offer });
    }
    const { supplies } = await rowsNow();
    expect(supplies.find((supply) => supply.id === "paper")?.leadTimesDays.toSorted()).toEqual([11, 4]);
  });
});
