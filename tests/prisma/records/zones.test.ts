import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { voidParcel } from "#prisma/records/parcel-corrections";
import { recordParcel } from "#prisma/records/parcels";
import { parcelsByZone, saveZone, zonesOf } from "#prisma/records/zones";
import { parcelBody, type ShopFixture, shopFixture } from "./shop-fixture";

const by = { device: "desk", now: "2026-03-10T12:00:00.000Z" } as const;

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
});
afterEach(() => shop.close());

describe("zones", () => {
  it("stand in the shop's order; those taken off come only where they are asked for", async () => {
    await saveZone(shop.db, { id: "far", name: "Far", retired: false, position: 1 });
    await saveZone(shop.db, { id: "moon", name: "Moon", retired: true, position: 2 });
    expect((await zonesOf(shop.db)).map(({ name }) => name)).toEqual(["Near", "Far"]);
    expect((await zonesOf(shop.db, { retired: true })).map(({ name }) => name)).toEqual([
      "Near",
      "Far",
      "Moon",
    ]);
  });

  it("count the parcels that went to each, and those without one; void ones do not count", async () => {
    await recordParcel(shop.db, parcelBody("parcel-1"), by);
    await recordParcel(shop.db, parcelBody("parcel-2"), by);
    await recordParcel(shop.db, parcelBody("parcel-3", { zoneId: null }), by);
    await recordParcel(shop.db, parcelBody("parcel-4", { packedOn: "2026-01-31" }), by);
    await voidParcel(shop.db, "parcel-2", "never sent", by);
    const counts = await parcelsByZone(shop.db, { from: "2026-03-01", to: "2026-03-31" });
    expect([counts.get("near"), counts.get(null), counts.size]).toEqual([1, 1, 2]);
  });
});
