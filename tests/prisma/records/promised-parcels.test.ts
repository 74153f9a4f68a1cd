import { afterEach, beforeEach, expect, it } from "vitest";
import { day } from "#lib/units/day";
import { voidParcel } from "#prisma/records/parcel-corrections";
import { recordParcel } from "#prisma/records/parcels";
import { promisedParcelsSince } from "#prisma/records/promised-parcels";
import { parcelBody, type ShopFixture, shopFixture } from "./shop-fixture";

const by = { device: "desk", now: "2026-03-10T12:00:00.000Z" } as const;

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
});
afterEach(() => shop.close());

it("promised parcels are those with a promise, weighed or not, without void ones and older ones", async () => {
  const promised = { mg: 900_000, typed: "900 g" };
  await recordParcel(
    shop.db,
    parcelBody("parcel-1", { promised, scaleMg: 910_000, scaleTyped: "910 g" }),
    by,
  );
  await recordParcel(shop.db, parcelBody("parcel-2", { promised, unusual: true }), by);
  await recordParcel(shop.db, parcelBody("parcel-3"), by);
  await recordParcel(shop.db, parcelBody("parcel-4", { promised }), by);
  await recordParcel(shop.db, parcelBody("parcel-5", { promised, packedOn: "2026-01-31" }), by);
  await voidParcel(shop.db, "parcel-4", "never sent", by);
  expect(await promisedParcelsSince(shop.db, day("2026-02-01"))).toEqual([
    { itemTypeId: "mug", promisedMg: 900_000, scaleMg: 910_000 },
    { itemTypeId: "mug", promisedMg: 900_000, scaleMg: null },
  ]);
});
