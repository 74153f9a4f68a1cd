import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { day } from "#lib/units/day";
import { type KeptRateCard, rateCardsOf, retireRateCard, saveRateCard } from "#prisma/records/rate-cards";
import { type ShopFixture, shopFixture } from "./shop-fixture";

const terms = { measures: "imperial", minorDigits: 2, currency: "USD" } as const;
const parcels: KeptRateCard = {
  id: "parcels-2026",
  service: "Parcels",
  validFrom: day("2026-01-01"),
  validTo: null,
  table: "up to\tNear\n8 oz\t4.60\n1 lb\t6.10",
  zoneIds: ["near"],
};

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
});
afterEach(() => shop.close());

describe("rate cards", () => {
  it("come back as typed, with their prices by zone", async () => {
    await saveRateCard(shop.db, parcels);
    const [kept] = await rateCardsOf(shop.db, terms);
    expect(kept).toMatchObject(parcels);
    expect(kept?.card).toMatchObject({ service: "Parcels", currency: "USD", zones: ["near"] });
    expect(kept?.card.bands[0]?.steps.map(({ prices }) => prices)).toEqual([[460], [610]]);
  });

  it("stand with the one that holds latest first, and leave when they are out of use", async () => {
    await saveRateCard(shop.db, { ...parcels, validTo: day("2026-06-30") });
    await saveRateCard(shop.db, { ...parcels, id: "parcels-july", validFrom: day("2026-07-01") });
    expect((await rateCardsOf(shop.db, terms)).map(({ id }) => id)).toEqual(["parcels-july", "parcels-2026"]);
    await retireRateCard(shop.db, "parcels-2026");
    expect((await rateCardsOf(shop.db, terms)).map(({ id }) => id)).toEqual(["parcels-july"]);
  });

  it("take a change under their own id", async () => {
    await saveRateCard(shop.db, parcels);
    await saveRateCard(shop.db, { ...parcels, table: "up to\tNear\n8 oz\t4.75" });
    const cards = await rateCardsOf(shop.db, terms);
    expect(cards.map(({ card }) => card.bands[0]?.steps.length)).toEqual([1]);
  });
});
