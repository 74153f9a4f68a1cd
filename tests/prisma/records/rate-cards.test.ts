import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { NO_WALLS } from "#lib/postage/size-walls";
import { day } from "#lib/units/day";
import { inTransaction } from "#prisma/client";
import {
  type KeptRateCard,
  putServiceFirst,
  rateCardsOf,
  retireRateCard,
  saveRateCards,
} from "#prisma/records/rate-cards";
import { exact, plainBand, plainCard, stepUpTo, typed } from "../../lib/postage/rate-card-fixture";
import { type ShopFixture, shopFixture } from "./shop-fixture";

const terms = { measures: "imperial", minorDigits: 2, currency: "USD" } as const;
const band = plainBand([stepUpTo("15.999", "oz", [460, 520]), stepUpTo("1", "lb", [610, 740])]);
const card = plainCard({ service: "Parcels", currency: "USD", zones: ["near", "far"], bands: [band] });
const parcels: KeptRateCard = {
  id: "parcels-2026",
  card,
  source: "the carrier's list, page 4",
  readOn: day("2025-12-20"),
};

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
});
afterEach(() => shop.close());

describe("rate cards", () => {
  it("come back whole, with their source", async () => {
    const whole: KeptRateCard = {
      ...parcels,
      card: {
        ...card,
        validTo: day("2026-12-31"),
        roundUpTo: typed("1", "oz"),
        bands: [
          {
            ...band,
            name: "small",
            walls: { ...NO_WALLS, longest: typed("22", "in"), weight: typed("1", "lb") },
          },
          plainBand([stepUpTo("70", "lb", [2000, 3000])], { name: "large", countsSize: false }),
        ],
        dimensional: {
          divisor: exact("139"),
          lengthUnit: "in",
          massUnit: "lb",
          floor: exact("1728"),
          sides: { kind: "up", to: exact("1") },
          result: { kind: "up", to: exact("1") },
          shapeFactor: exact("0.785"),
          atMost: exact("70"),
          zones: ["far"],
        },
      },
    };
    await saveRateCards(shop.db, [whole], terms);
    const [kept] = await rateCardsOf(shop.db, terms);
    const { service, validFrom, validTo } = whole.card;
    expect(kept).toEqual({ ...whole, service, validFrom, validTo });
  });

  it("are read as they were meant, also after the shop changed how it writes numbers", async () => {
    const grouped = { ...card, bands: [plainBand([stepUpTo("1,000", "g", [460, 520])])] };
    await saveRateCards(shop.db, [{ ...parcels, card: grouped }], terms);
    const [kept] = await rateCardsOf(shop.db, { measures: "metric", minorDigits: 0, currency: "JPY" });
    expect(kept?.card).toEqual(grouped);
  });

  it("of the first edition are still read: a table as typed, without a source; an empty cell has no price", async () => {
    await inTransaction(shop.db, (tx) =>
      tx.rateCard.create({
        data: {
          id: "old",
          service: "Parcels",
          validFrom: "2025-01-01",
          validTo: "2025-12-31",
          card: JSON.stringify({
            edition: 1,
            table: "up to\tNear\tFar\n8 oz\t4.60\t5.20\n1 lb\t6.10\t",
            zoneIds: ["near", "far"],
          }),
        },
      }),
    );
    const [kept] = await rateCardsOf(shop.db, terms);
    expect(kept).toMatchObject({ id: "old", source: null, readOn: null, validTo: "2025-12-31" });
    expect(kept?.card).toMatchObject({ service: "Parcels", currency: "USD", zones: ["near", "far"] });
    expect(kept?.card.bands[0]?.steps.map(({ prices }) => prices)).toEqual([
      [460, 520],
      [610, null],
    ]);
    if (kept === undefined) throw new RangeError("a card was expected");
    await saveRateCards(shop.db, [kept], terms);
    expect((await rateCardsOf(shop.db, terms)).map((each) => each.card)).toEqual([kept.card]);
  });

  it("of an edition that is not known are refused, not guessed", async () => {
    const data = {
      id: "new",
      service: "Parcels",
      validFrom: "2025-01-01",
      card: JSON.stringify({ edition: 3 }),
    };
    await inTransaction(shop.db, (tx) => tx.rateCard.create({ data }));
    await expect(rateCardsOf(shop.db, terms)).rejects.toThrow("another edition");
  });

  it("stand with the one that holds latest first, and leave when they are out of use", async () => {
    const ended = { ...parcels, card: { ...card, validTo: day("2026-06-30") } };
    const july = { ...parcels, id: "parcels-july", card: { ...card, validFrom: day("2026-07-01") } };
    await saveRateCards(shop.db, [ended, july], terms);
    expect((await rateCardsOf(shop.db, terms)).map(({ id }) => id)).toEqual(["parcels-july", "parcels-2026"]);
    await retireRateCard(shop.db, "parcels-2026");
    expect((await rateCardsOf(shop.db, terms)).map(({ id }) => id)).toEqual(["parcels-july"]);
  });

  it("take a change under their own id", async () => {
    await saveRateCards(shop.db, [parcels], terms);
    const bands = [plainBand([stepUpTo("8", "oz", [475, 530])])];
    await saveRateCards(shop.db, [{ ...parcels, card: { ...card, bands } }], terms);
    const cards = await rateCardsOf(shop.db, terms);
    expect(cards.map((each) => each.card.bands[0]?.steps.length)).toEqual([1]);
  });

  it("keep the main service first, whatever their names, until another is chosen", async () => {
    const letters = { ...parcels, id: "letters", card: { ...card, service: "Letters" } };
    await saveRateCards(shop.db, [parcels, letters], terms);
    const services = async () => (await rateCardsOf(shop.db, terms)).map(({ service }) => service);
    expect(await services()).toEqual(["Parcels", "Letters"]);
    await putServiceFirst(shop.db, "Letters");
    expect(await services()).toEqual(["Letters", "Parcels"]);
    await saveRateCards(shop.db, [parcels, letters], terms);
    expect(await services()).toEqual(["Letters", "Parcels"]);
  });

  it("are all kept, or none", async () => {
    const broken = { ...parcels, id: "broken", card: { ...card, currency: "no currency" } };
    await expect(saveRateCards(shop.db, [parcels, broken], terms)).rejects.toThrow(RangeError);
    expect(await rateCardsOf(shop.db, terms)).toEqual([]);
  });
});
