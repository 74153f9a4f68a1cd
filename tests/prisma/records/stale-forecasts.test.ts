import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { AMOUNT_PER_UNIT, amount } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { type Database, inTransaction } from "#prisma/client";
import { removeClosedSpan, saveClosedSpan } from "#prisma/records/closed-spans";
import { recordParcel } from "#prisma/records/parcels";
import { removePlannedEvent, savePlannedEvent } from "#prisma/records/planned-events";
import { type Recipe, saveRecipe } from "#prisma/records/recipes";
import { saveShop, shopOf } from "#prisma/records/shop";
import { staleForecasts } from "#prisma/records/stale-forecasts";
import { saveOffer, saveSupplier } from "#prisma/records/suppliers";
import { parcelBody, type ShopFixture, shopFixture } from "./shop-fixture";

const NOW = "2026-03-10T12:00:00.000Z";

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
});
afterEach(() => shop.close());

/** Keeps forecasts that looked back until these days, none of them stale. */
async function keepForecasts(...untils: readonly string[]): Promise<void> {
  await inTransaction(shop.db, async (tx) => {
    await tx.forecast.deleteMany();
    await tx.forecast.createMany({
      data: untils.map((until) => ({ asOf: until, until, edition: 1, madeAt: NOW, ground: "{}" })),
    });
  });
}

async function staleOnes(): Promise<string[]> {
  const rows = await shop.db.forecast.findMany({ where: { stale: true }, orderBy: { asOf: "asc" } });
  return rows.map((row) => row.asOf);
}

describe("stale forecasts", () => {
  it("are those that looked back over the day that changed", async () => {
    await keepForecasts("2026-03-09", "2026-03-16", "2026-03-23");
    await inTransaction(shop.db, (tx) => staleForecasts(tx, day("2026-03-16")));
    expect(await staleOnes()).toEqual(["2026-03-23"]);
    await inTransaction(shop.db, (tx) => staleForecasts(tx, day("2026-03-15")));
    expect(await staleOnes()).toEqual(["2026-03-16", "2026-03-23"]);
  });

  it("are all of them where the change belongs to no day", async () => {
    await keepForecasts("2026-03-09", "2026-03-23");
    await inTransaction(shop.db, (tx) => staleForecasts(tx));
    expect(await staleOnes()).toEqual(["2026-03-09", "2026-03-23"]);
  });

  it("stay as they are when the change is undone", async () => {
    await keepForecasts("2026-03-09");
    const failing = inTransaction(shop.db, async (tx) => {
      await staleForecasts(tx);
      throw new RangeError("refused after all");
    });
    await expect(failing).rejects.toThrow("refused after all");
    expect(await staleOnes()).toEqual([]);
  });
});

const event = {
  id: "market",
  name: "Market",
  fromDay: day("2026-12-01"),
  toDay: day("2026-12-14"),
  upliftPercent: 50,
  itemTypeIds: ["mug"],
};
const supplier = {
  id: "north",
  name: "Invented supplier",
  leadTimeDays: 6,
  deliveryMinor: 500,
  freeDeliveryMinor: null,
  note: null,
  retired: false,
};
const span = { id: "holiday", fromDay: "2026-08-01", toDay: "2026-08-14", words: "Holiday" };
const recipe: Recipe = {
  id: "mug-paper",
  itemTypeId: "mug",
  style: "paper",
  effectiveFrom: day("2026-01-01"),
  commonPractice: false,
  note: null,
  steps: [
    {
      id: "wrap",
      position: 0,
      words: "Wrap",
      supplyId: "paper",
      amount: amount(2 * AMOUNT_PER_UNIT),
      typedValue: "2",
      typedUnit: "sheet",
      per: "piece",
    },
  ],
  cartons: [],
};
const offer = {
  id: "bundle",
  supplyId: "paper",
  supplierId: "north",
  pack: "bundle of 416 sheets",
  packAmount: amount(416 * AMOUNT_PER_UNIT),
  packTyped: "416",
  priceMinor: 3150,
  retired: false,
  breaks: [],
};

async function saveGuess(db: Database): Promise<void> {
  const settings = await shopOf(db);
  if (settings === null) throw new TypeError("the fixture has a shop");
  await saveShop(db, { ...settings, guessedParcels: 10 });
}

describe("every forecast is stale after", () => {
  it.each<[string, (db: Database) => Promise<unknown>]>([
    ["the shop's settings and its guess were saved", saveGuess],
    ["closed days were added", (db) => saveClosedSpan(db, span)],
    ["closed days were taken off", (db) => removeClosedSpan(db, "holiday")],
    ["an event was planned", (db) => savePlannedEvent(db, event)],
    ["an event was taken off", (db) => removePlannedEvent(db, "market")],
    ["a recipe was saved", (db) => saveRecipe(db, recipe, NOW)],
    ["a supplier's lead time was saved", (db) => saveSupplier(db, supplier)],
  ])("%s", async (_what, change) => {
    await keepForecasts("2026-03-09", "2026-03-16");
    await change(shop.db);
    expect(await staleOnes()).toEqual(["2026-03-09", "2026-03-16"]);
  });

  it("an offer was saved", async () => {
    await saveSupplier(shop.db, supplier);
    await keepForecasts("2026-03-09", "2026-03-16");
    await saveOffer(shop.db, offer);
    expect(await staleOnes()).toEqual(["2026-03-09", "2026-03-16"]);
  });
});

describe("no forecast is stale after", () => {
  it("a recipe was refused because parcels hold to its version", async () => {
    await saveRecipe(shop.db, recipe, NOW);
    const packed = await recordParcel(shop.db, parcelBody("one"), { device: "test", now: NOW });
    expect(packed.kind).toBe("recorded");
    await keepForecasts("2026-03-09");
    expect(await saveRecipe(shop.db, { ...recipe, id: "other" }, NOW)).toMatchObject({ kind: "in-use" });
    expect(await staleOnes()).toEqual([]);
  });
});
