import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { saveItemType } from "#prisma/records/item-types";
import type { Recorder } from "#prisma/records/ledger";
import type { ParcelBody } from "#prisma/records/parcel-body";
import { correctParcel, voidParcel } from "#prisma/records/parcel-corrections";
import { recordParcel } from "#prisma/records/parcels";
import { typeCosts } from "#prisma/records/type-costs";
import { paperParcel } from "./paper-parcel";
import { pricedShop } from "./priced-shop";
import { parcelBody, type ShopFixture } from "./shop-fixture";

const CENT = 10_000;
const MARCH = { from: day("2026-03-01"), to: day("2026-03-31") };
const by: Recorder = { device: "desk", now: "2026-03-10T12:00:00.000Z" };

let shop: ShopFixture;
beforeEach(async () => {
  shop = await pricedShop();
});
afterEach(() => shop.close());

const record = (body: ParcelBody) => recordParcel(shop.db, body, by);

describe("what packing costs by item type", () => {
  it("is each parcel's cost as booked, and what they took together", async () => {
    await record(paperParcel("parcel-1", 7));
    await record(paperParcel("parcel-2", 10, { pieces: [{ itemTypeId: "mug", pieces: 2 }] }));
    expect(await typeCosts(shop.db, MARCH)).toEqual([
      {
        itemTypeId: "mug",
        parcels: 2,
        pieces: 3,
        costs: [139 * CENT, 160 * CENT],
        taken: [
          { supplyId: "carton-8", kind: "carton", amount: amountOfUnits(2), value: 180 * CENT },
          { supplyId: "paper", kind: "paper", amount: amountOfUnits(17), value: 119 * CENT },
        ],
      },
    ]);
  });

  it("counts a parcel with an unknown cost, and keeps it out of the costs in cash", async () => {
    await record(paperParcel("parcel-1", 7));
    await record(parcelBody("parcel-2"));
    const [mug] = await typeCosts(shop.db, MARCH);
    expect(mug).toMatchObject({ parcels: 2, costs: [139 * CENT] });
    expect(mug?.taken.map(({ supplyId, value }) => [supplyId, value])).toEqual([
      ["bubble", 0],
      ["carton-8", 90 * CENT],
      ["paper", 49 * CENT],
    ]);
    expect(mug?.taken.find(({ supplyId }) => supplyId === "paper")?.amount).toBe(amountOfUnits(14));
  });

  it("follows corrections, and leaves out what is void, unusual, mixed or of other days", async () => {
    const { db } = shop;
    await saveItemType(db, {
      id: "bowl",
      name: "Bowl",
      massMg: null,
      massTyped: null,
      lengthUm: null,
      widthUm: null,
      heightUm: null,
      sizesTyped: null,
      note: null,
      retired: false,
      position: 1,
    });
    const mixed = ["mug", "bowl"].map((itemTypeId) => ({ itemTypeId, pieces: 1 }));
    await record(paperParcel("parcel-1", 7));
    await record(paperParcel("parcel-2", 7));
    await record(paperParcel("parcel-3", 7, { unusual: true }));
    await record(paperParcel("parcel-4", 7, { pieces: mixed }));
    await record(paperParcel("parcel-5", 7, { packedOn: "2026-02-28" }));
    await correctParcel(db, paperParcel("parcel-1", 8), by);
    await voidParcel(db, "parcel-2", "never sent", by);
    const found = await typeCosts(db, MARCH);
    expect(found.map(({ itemTypeId, costs }) => [itemTypeId, costs])).toEqual([["mug", [146 * CENT]]]);
  });

  it("has a parcel that took nothing at no cost", async () => {
    await record(parcelBody("parcel-1", { lines: [], cartons: [] }));
    expect(await typeCosts(shop.db, MARCH)).toEqual([
      { itemTypeId: "mug", parcels: 1, pieces: 1, costs: [0], taken: [] },
    ]);
  });
});
