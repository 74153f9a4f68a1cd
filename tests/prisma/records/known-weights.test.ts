import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { packedWeight } from "#lib/packing/weight/packed-weight";
import { addDays, day } from "#lib/units/day";
import { itemTypesOf, saveItemType } from "#prisma/records/item-types";
import { knownWeightsOn } from "#prisma/records/known-weights";
import type { Recorder } from "#prisma/records/ledger";
import { recordParcel } from "#prisma/records/parcels";
import { saveSupply, suppliesOf } from "#prisma/records/supplies";
import { parcelBody, type ShopFixture, shopFixture } from "./shop-fixture";

const by: Recorder = { device: "desk", now: "2026-03-30T12:00:00.000Z" };
const today = day("2026-03-30");
const group = { itemTypeId: "mug", cartonId: "carton-8", style: "paper" } as const;
const MASSES: Readonly<Record<string, number>> = { paper: 20_000, bubble: 5_000, "carton-8": 200_000 };

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
  for (const supply of await suppliesOf(shop.db)) {
    await saveSupply(shop.db, { ...supply, massMg: MASSES[supply.id] ?? null });
  }
  await saveMugMass(400_000);
  // The bill is 760 g; the scale says 5 % more each time.
  for (let at = 0; at < 8; at += 1) {
    const packedOn = addDays(today, at - 8);
    await recordParcel(
      shop.db,
      parcelBody(`parcel-${at}`, { packedOn, scaleMg: 798_000 + 1_000 * (at % 3), scaleTyped: "798 g" }),
      by,
    );
  }
});
afterEach(() => shop.close());

async function saveMugMass(massMg: number): Promise<void> {
  const [mug] = await itemTypesOf(shop.db);
  if (mug === undefined) throw new TypeError("the fixture has an item type");
  await saveItemType(shop.db, { ...mug, massMg });
}

describe("what a shop knows of its weights", () => {
  it("is learned from its weighed parcels", async () => {
    const weight = packedWeight(await knownWeightsOn(shop.db, today), { ...group, predictedMg: 760_000 });
    expect(weight).toMatchObject({ parcels: 8, basis: "group", guess: false });
    expect(weight.likelyMg).toBeGreaterThan(785_000);
    expect(weight.likelyMg).toBeLessThan(805_000);
  });

  it("stays over the day, whatever is packed, and is learned anew on the next", async () => {
    const known = await knownWeightsOn(shop.db, today);
    await recordParcel(
      shop.db,
      parcelBody("parcel-today", { packedOn: today, scaleMg: 800_000, scaleTyped: "800 g" }),
      by,
    );
    expect(await knownWeightsOn(shop.db, today)).toBe(known);
    expect((await knownWeightsOn(shop.db, addDays(today, 1))).shop.parcels).toBe(9);
  });

  it("is learned anew once a mass was measured", async () => {
    await knownWeightsOn(shop.db, today);
    await saveMugMass(438_000);
    const weight = packedWeight(await knownWeightsOn(shop.db, today), { ...group, predictedMg: 798_000 });
    expect(weight.likelyMg).toBeGreaterThan(790_000);
    expect(weight.likelyMg).toBeLessThan(808_000);
  });
});
