import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { day } from "#lib/units/day";
import { brokenParcelsSince } from "#prisma/records/broken-parcels";
import type { Recorder } from "#prisma/records/ledger";
import { markBroken, voidParcel } from "#prisma/records/parcel-corrections";
import { recordParcel } from "#prisma/records/parcels";
import { parcelBody, type ShopFixture, shopFixture } from "./shop-fixture";

const by: Recorder = { device: "desk", now: "2026-03-10T12:00:00.000Z" };
const crushed = { on: "2026-03-14", cause: "crushed", note: "rim" };

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
});
afterEach(() => shop.close());

describe("broken parcels", () => {
  it("are counted with all others by style, carton and item type", async () => {
    await recordParcel(shop.db, parcelBody("parcel-1"), by);
    await recordParcel(shop.db, parcelBody("parcel-2", { style: "bubble" }), by);
    await recordParcel(
      shop.db,
      parcelBody("parcel-3", { cartons: [{ supplyId: null, sizesTyped: "9 x 9 x 9 in" }] }),
      by,
    );
    await markBroken(shop.db, "parcel-1", crushed);
    const found = await brokenParcelsSince(shop.db, day("2026-01-01"));
    expect(found).toMatchObject({ parcels: 3, broken: 1, causes: new Map([["crushed", 1]]) });
    expect(new Set(found.traits)).toEqual(
      new Set([
        { trait: "style", value: "paper", parcels: 2, broken: 1 },
        { trait: "style", value: "bubble", parcels: 1, broken: 0 },
        { trait: "carton", value: "carton-8", parcels: 2, broken: 1 },
        { trait: "item-type", value: "mug", parcels: 3, broken: 1 },
      ]),
    );
  });

  it("leave out voided parcels and those packed before", async () => {
    await recordParcel(shop.db, parcelBody("parcel-1"), by);
    await recordParcel(shop.db, parcelBody("parcel-2"), by);
    await markBroken(shop.db, "parcel-1", crushed);
    await markBroken(shop.db, "parcel-2", crushed);
    await voidParcel(shop.db, "parcel-2", "never sent", by);
    expect(await brokenParcelsSince(shop.db, day("2026-01-01"))).toMatchObject({ parcels: 1, broken: 1 });
    expect(await brokenParcelsSince(shop.db, day("2026-03-11"))).toEqual({
      parcels: 0,
      broken: 0,
      traits: [],
      causes: new Map(),
    });
  });
});
