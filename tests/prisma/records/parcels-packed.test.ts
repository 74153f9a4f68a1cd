import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { day } from "#lib/units/day";
import { instant } from "#lib/units/instant";
import { recordParcel } from "#prisma/records/parcels";
import { parcelsPacked } from "#prisma/records/parcels-packed";
import { parcelBody, type ShopFixture, shopFixture } from "./shop-fixture";

describe("parcels packed", () => {
  let shop: ShopFixture;
  const by = { device: "desk", now: instant("2026-03-12T12:00:00.000Z") };

  beforeAll(async () => {
    shop = await shopFixture();
    await recordParcel(shop.db, parcelBody("first", { packedOn: "2026-03-09" }), by);
    await recordParcel(shop.db, parcelBody("second", { packedOn: "2026-03-11" }), by);
    const pieces = [{ itemTypeId: "mug", pieces: 4 }];
    await recordParcel(shop.db, parcelBody("third", { packedOn: "2026-03-11", pieces }), by);
  });

  afterAll(() => shop.close());

  it("counts parcels, not pieces, with both ends of the span", async () => {
    expect(await parcelsPacked(shop.db, day("2026-03-09"), day("2026-03-11"))).toBe(3);
  });

  it("is zero for days without a parcel", async () => {
    expect(await parcelsPacked(shop.db, day("2026-03-01"), day("2026-03-08"))).toBe(0);
  });
});
