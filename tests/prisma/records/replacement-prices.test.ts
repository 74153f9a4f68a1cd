import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { replacementPrices } from "#prisma/records/replacement-prices";
import { saveOffer, saveSupplier } from "#prisma/records/suppliers";
import { type ShopFixture, shopFixture } from "./shop-fixture";

const CENT = 10_000;
const offer = (id: string, units: number, priceMinor: number | null, change: { retired?: boolean } = {}) => ({
  id,
  supplyId: "paper",
  supplierId: "marram",
  pack: `${units} sheets`,
  packAmount: amountOfUnits(units),
  packTyped: `${units} sheets`,
  priceMinor,
  retired: false,
  breaks: [{ fromPacks: 4, priceMinor: 1 }],
  ...change,
});

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
  await saveSupplier(shop.db, { id: "marram", name: "Marram", leadTimeDays: 4, deliveryMinor: 900 });
});
afterEach(() => shop.close());

describe("replacement prices", () => {
  it("are those of the cheapest pack in use, without delivery and price breaks", async () => {
    await saveOffer(shop.db, offer("small", 100, 900));
    await saveOffer(shop.db, offer("large", 400, 2_800));
    await saveOffer(shop.db, offer("gone", 400, 400, { retired: true }));
    await saveOffer(shop.db, offer("asked", 400, null));
    expect(await replacementPrices(shop.db)).toEqual(new Map([["paper", 7 * CENT]]));
  });

  it("of a day are what was on offer then", async () => {
    await saveOffer(shop.db, offer("large", 400, 2_400), day("2026-01-01"));
    await saveOffer(shop.db, offer("large", 400, 2_800), day("2026-06-01"));
    expect(await replacementPrices(shop.db, day("2026-05-31"))).toEqual(new Map([["paper", 6 * CENT]]));
    expect(await replacementPrices(shop.db, day("2026-06-01"))).toEqual(new Map([["paper", 7 * CENT]]));
    expect(await replacementPrices(shop.db, day("2025-12-31"))).toEqual(new Map());
  });

  it("are not made up for a supply that nobody offers", async () => {
    expect(await replacementPrices(shop.db)).toEqual(new Map());
  });
});
