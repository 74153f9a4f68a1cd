import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { amountOfUnits } from "#lib/units/amount";
import type { Recorder } from "#prisma/records/ledger";
import { correctParcel, voidParcel } from "#prisma/records/parcel-corrections";
import { parcelMaterials } from "#prisma/records/parcel-materials";
import { recordParcel } from "#prisma/records/parcels";
import { paperParcel } from "./paper-parcel";
import { pricedShop } from "./priced-shop";
import { parcelBody, type ShopFixture } from "./shop-fixture";

const CENT = 10_000;
const by: Recorder = { device: "desk", now: "2026-03-10T12:00:00.000Z" };

let shop: ShopFixture;
beforeEach(async () => {
  shop = await pricedShop();
});
afterEach(() => shop.close());

describe("the materials of parcels", () => {
  it("are their lines and cartons with kinds and booked values, unknown where no cost is", async () => {
    await recordParcel(shop.db, parcelBody("parcel-1"), by);
    expect((await parcelMaterials(shop.db, ["parcel-1", "nobody"])).get("parcel-1")).toEqual([
      { supplyId: "paper", kind: "paper", amount: amountOfUnits(7), value: 49 * CENT },
      { supplyId: "bubble", kind: "bubble", amount: amountOfUnits(4), value: null },
      { supplyId: "carton-8", kind: "carton", amount: amountOfUnits(1), value: 90 * CENT },
    ]);
  });

  it("are as corrected, and nothing of what was voided", async () => {
    await recordParcel(shop.db, paperParcel("parcel-1", 7), by);
    await recordParcel(shop.db, paperParcel("parcel-2", 7), by);
    await correctParcel(shop.db, paperParcel("parcel-1", 9, { cartons: [] }), by);
    await voidParcel(shop.db, "parcel-2", "never sent", by);
    expect(await parcelMaterials(shop.db, ["parcel-1", "parcel-2"])).toEqual(
      new Map([
        ["parcel-1", [{ supplyId: "paper", kind: "paper", amount: amountOfUnits(9), value: 63 * CENT }]],
      ]),
    );
  });
});
