import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { day } from "#lib/units/day";
import { paidParcelsOf } from "#prisma/records/paid-parcels";
import { voidParcel } from "#prisma/records/parcel-corrections";
import { recordParcel } from "#prisma/records/parcels";
import { parcelBody, type ShopFixture, shopFixture } from "./shop-fixture";

const by = { device: "desk", now: "2026-03-10T12:00:00.000Z" } as const;
const span = { from: day("2026-03-01"), to: day("2026-03-31") };

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
});
afterEach(() => shop.close());

describe("parcels with their postage", () => {
  it("come with what decides their price; void ones, older ones and those without postage are left out", async () => {
    const paid = { postageMinor: 640, scaleMg: 910_000, scaleTyped: "910 g" };
    await recordParcel(shop.db, parcelBody("parcel-1", { ...paid, postedOn: "2026-03-11" }), by);
    await recordParcel(shop.db, parcelBody("parcel-2", paid), by);
    await recordParcel(shop.db, parcelBody("parcel-3"), by);
    await recordParcel(shop.db, parcelBody("parcel-4", { ...paid, packedOn: "2026-02-28" }), by);
    await voidParcel(shop.db, "parcel-2", "never sent", by);
    const rows = await paidParcelsOf(shop.db, span);
    expect(rows).toMatchObject([
      { id: "parcel-1", packedOn: "2026-03-10", postedOn: "2026-03-11", zoneId: "near", ...paid },
    ]);
    expect(rows[0]?.pieces).toMatchObject([{ itemTypeId: "mug", name: "Mug", pieces: 1 }]);
    expect(rows[0]?.carton).toEqual({ supplyId: "carton-8", sizesUm: null, cutHeightUm: null });
  });

  it("know the sizes of an odd carton and the height that one was cut down to", async () => {
    const odd = { supplyId: null, sizesTyped: "13 x 11 x 9 in" };
    await recordParcel(shop.db, parcelBody("parcel-1", { postageMinor: 640, cartons: [odd] }), by);
    const cut = { supplyId: "carton-8", cutTyped: "6 in" };
    await recordParcel(shop.db, parcelBody("parcel-2", { postageMinor: 640, cartons: [cut] }), by);
    const cartons = new Map((await paidParcelsOf(shop.db, span)).map(({ id, carton }) => [id, carton]));
    expect(cartons.get("parcel-1")?.sizesUm).toEqual([330_200, 279_400, 228_600]);
    expect(cartons.get("parcel-2")).toEqual({ supplyId: "carton-8", sizesUm: null, cutHeightUm: 152_400 });
  });
});
