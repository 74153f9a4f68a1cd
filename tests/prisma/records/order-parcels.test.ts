import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { orderParcels } from "#prisma/records/order-parcels";
import { voidParcel } from "#prisma/records/parcel-corrections";
import { recordParcel } from "#prisma/records/parcels";
import { parcelBody, type ShopFixture, shopFixture } from "./shop-fixture";

const by = { device: "desk", now: "2026-03-10T12:00:00.000Z" } as const;

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
  const both = [
    { reference: "A-1", share: 8_000 },
    { reference: "A-2", share: 4_000 },
  ];
  await recordParcel(shop.db, parcelBody("parcel-1", { orders: both }), by);
  await recordParcel(shop.db, parcelBody("parcel-2", { orders: [{ reference: "A-2" }] }), by);
});
afterEach(() => shop.close());

describe("the orders in a parcel", () => {
  it("come with their shares and with the other parcels that they are in", async () => {
    expect(await orderParcels(shop.db, "parcel-1")).toEqual([
      { reference: "A-1", parcels: [{ parcelId: "parcel-1", shares: [8_000, 4_000], own: 0 }] },
      {
        reference: "A-2",
        parcels: [
          { parcelId: "parcel-1", shares: [8_000, 4_000], own: 1 },
          { parcelId: "parcel-2", shares: [12_000], own: 0 },
        ],
      },
    ]);
  });

  it("leave out voided parcels", async () => {
    await voidParcel(shop.db, "parcel-2", "never sent", by);
    expect((await orderParcels(shop.db, "parcel-1"))[1]?.parcels).toHaveLength(1);
  });
});
