import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { GET } from "#app/api/rate-cards.csv/route.ts";
import { importedCards } from "#app/postage/imported-cards.ts";
import { day } from "#lib/units/day";
import { rateCardsOf, saveRateCards } from "#prisma/records/rate-cards";
import { shopOf } from "#prisma/records/shop";
import { zonesOf } from "#prisma/records/zones";
import { plainBand, plainCard, stepUpTo } from "../../lib/postage/rate-card-fixture";
import { type ShopFixture, shopFixture } from "../../prisma/records/shop-fixture";

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
  globalThis.waddingDatabase = Promise.resolve(shop.db);
});
afterEach(async () => {
  globalThis.waddingDatabase = undefined;
  await shop.close();
});

describe("rate cards as CSV", () => {
  it("carry the names of zones, and are imported again as the cards that are there already", async () => {
    const settings = await shopOf(shop.db);
    if (settings === null) throw new RangeError("a shop was expected");
    const bands = [plainBand([stepUpTo("8", "oz", [460])])];
    const card = plainCard({ service: "=Parcels, small", currency: "USD", zones: ["near"], bands });
    await saveRateCards(
      shop.db,
      [{ id: "a", card, source: "invented", readOn: day("2025-12-20") }],
      settings,
    );

    const answer = await GET();
    expect(answer.headers.get("content-type")).toBe("text/csv; charset=utf-8");
    expect(answer.headers.get("content-disposition")).toContain("rate-cards.csv");
    const text = await answer.text();
    expect(text.split("\r\n").slice(0, 2)).toEqual([
      "row,what,value,Near",
      'card,service,"\'=Parcels, small"',
    ]);

    const form = new FormData();
    form.set("file", new File([text], "rate-cards.csv"));
    const ground = {
      shop: settings,
      zones: await zonesOf(shop.db),
      kept: await rateCardsOf(shop.db, settings),
    };
    expect(await importedCards(form, ground)).toMatchObject({
      kind: "cards",
      cards: [],
      words: "0 cards are kept. 1 card was there already.",
    });
  });
});
