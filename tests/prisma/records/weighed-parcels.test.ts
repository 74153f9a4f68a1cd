import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { day } from "#lib/units/day";
import { itemTypesOf, saveItemType } from "#prisma/records/item-types";
import type { Recorder } from "#prisma/records/ledger";
import { correctParcel, voidParcel } from "#prisma/records/parcel-corrections";
import { recordParcel } from "#prisma/records/parcels";
import { saveSupply, suppliesOf } from "#prisma/records/supplies";
import { weighedParcelsOf } from "#prisma/records/weighed-parcels";
import { parcelBody, type ShopFixture, shopFixture } from "./shop-fixture";

const by: Recorder = { device: "desk", now: "2026-03-10T12:00:00.000Z" };
const weighed = { scaleMg: 800_000, scaleTyped: "800 g" };
const MASSES: Readonly<Record<string, number>> = { paper: 20_000, bubble: 5_000, "carton-8": 200_000 };

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
  for (const supply of await suppliesOf(shop.db)) {
    await saveSupply(shop.db, { ...supply, massMg: MASSES[supply.id] ?? null });
  }
  await saveMugMass(400_000);
});
afterEach(() => shop.close());

async function saveMugMass(massMg: number | null): Promise<void> {
  const [mug] = await itemTypesOf(shop.db);
  if (mug === undefined) throw new TypeError("the fixture has an item type");
  await saveItemType(shop.db, { ...mug, massMg });
}

const until = day("2026-03-11");

describe("weighed parcels", () => {
  it("come with what their bill weighs: pieces, lines and carton", async () => {
    await recordParcel(shop.db, parcelBody("parcel-1", weighed), by);
    // One mug 400 g, 7 sheets of 20 g, 4 sq ft of 5 g, carton 200 g.
    expect(await weighedParcelsOf(shop.db, until)).toEqual([
      {
        packedOn: "2026-03-10",
        itemTypeId: "mug",
        cartonId: "carton-8",
        style: "paper",
        predictedMg: 760_000,
        scaleMg: 800_000,
        unusual: false,
      },
    ]);
  });

  it("go by the masses of today and by the bill as corrected", async () => {
    await recordParcel(shop.db, parcelBody("parcel-1", weighed), by);
    const [sheets] = parcelBody("parcel-1").lines;
    if (sheets === undefined) throw new TypeError("the fixture's parcel has lines");
    await correctParcel(shop.db, parcelBody("parcel-1", { ...weighed, lines: [sheets] }), by);
    await saveMugMass(450_000);
    expect((await weighedParcelsOf(shop.db, until)).map(({ predictedMg }) => predictedMg)).toEqual([790_000]);
  });

  it("leave out what is unweighed, unusual, voided, in an odd carton, later, or has a part of unknown mass", async () => {
    const odd = [{ supplyId: null, sizesTyped: "9 x 9 x 9 in" }];
    await recordParcel(shop.db, parcelBody("parcel-1"), by);
    await recordParcel(shop.db, parcelBody("parcel-2", { ...weighed, unusual: true }), by);
    await recordParcel(shop.db, parcelBody("parcel-3", weighed), by);
    await voidParcel(shop.db, "parcel-3", "never sent", by);
    await recordParcel(shop.db, parcelBody("parcel-4", { ...weighed, cartons: odd }), by);
    await recordParcel(shop.db, parcelBody("parcel-5", weighed), by);
    expect(await weighedParcelsOf(shop.db, until)).toHaveLength(1);
    expect(await weighedParcelsOf(shop.db, day("2026-03-10"))).toEqual([]);
    await saveMugMass(null);
    expect(await weighedParcelsOf(shop.db, until)).toEqual([]);
    await saveMugMass(400_000);
    const bubble = (await suppliesOf(shop.db)).find(({ id }) => id === "bubble");
    if (bubble === undefined) throw new TypeError("the fixture has bubble");
    await saveSupply(shop.db, { ...bubble, massMg: null });
    expect(await weighedParcelsOf(shop.db, until)).toEqual([]);
  });
});
