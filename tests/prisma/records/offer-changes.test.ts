import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { AMOUNT_PER_UNIT, amount } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { inTransaction } from "#prisma/client";
import { movementsOf, reverseMovement } from "#prisma/records/movements";
import { changeOffers, offerChangesOfPurchase } from "#prisma/records/offer-changes";
import { pricesPaid } from "#prisma/records/prices-paid";
import { placePurchase } from "#prisma/records/purchases";
import { type ReceiptBody, recordReceipt, recordReceipts } from "#prisma/records/receipts";
import { spendingFrom } from "#prisma/records/spending";
import { offerPricesOf, offersOf, saveOffer, saveSupplier } from "#prisma/records/suppliers";
import { stockOf } from "#prisma/records/supplies";
import { type ShopFixture, shopFixture } from "./shop-fixture";

const units = (n: number) => amount(n * AMOUNT_PER_UNIT);
const by = { device: "test", now: "2026-03-10T12:00:00.000Z" };
const offer = {
  id: "roll",
  supplyId: "bubble",
  supplierId: "north",
  pack: "roll of 188 sq ft",
  packAmount: units(188),
  packTyped: "188 sq ft",
  priceMinor: 2_600,
  retired: false,
  breaks: [{ fromPacks: 4, priceMinor: 2_450 }],
};

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
  await saveSupplier(shop.db, { id: "north", name: "Invented supplier", leadTimeDays: 6 });
  await saveOffer(shop.db, offer, day("2026-01-05"));
});
afterEach(() => shop.close());

async function order(id: string, packs: number): Promise<void> {
  const line = { id: `${id}-line`, supplyId: "bubble", offerId: "roll", packs, packAmount: units(188) };
  await placePurchase(
    shop.db,
    {
      id,
      supplierId: "north",
      placedOn: "2026-03-02",
      note: null,
      lines: [{ ...line, priceMinor: 2_600, expectedOn: "2026-03-09" }],
    },
    by,
  );
}

type Line = ReceiptBody["lines"][number];

function receipt(id: string, line: Partial<Line> = {}, head: Partial<ReceiptBody> = {}): ReceiptBody {
  const pack = { packs: 2, packAmount: units(188), packTyped: "188 sq ft", priceMinor: 2_600 };
  return {
    id,
    supplierId: "north",
    receivedOn: "2026-03-10",
    kind: "paid",
    currency: "USD",
    rateMillionths: 1_000_000,
    taxIncluded: true,
    deliveryMinor: 0,
    taxMinor: 0,
    note: null,
    lines: [{ id: `${id}-1`, supplyId: "bubble", purchaseLineId: null, ...pack, ...line }],
    ...head,
  };
}

async function theOffer() {
  return (await offersOf(shop.db)).find((each) => each.id === "roll");
}

async function isForecastStale(): Promise<boolean> {
  return (await shop.db.forecast.findMany()).some((row) => row.stale);
}

describe("an offer", () => {
  it("keeps what it was offered at, a day of its own for each change and none where nothing changed", async () => {
    await saveOffer(shop.db, { ...offer, pack: "big roll" }, day("2026-02-01"));
    await saveOffer(shop.db, { ...offer, priceMinor: 2_800 }, day("2026-03-01"));
    await saveOffer(shop.db, { ...offer, priceMinor: 2_700 }, day("2026-03-01"));
    expect(await offerPricesOf(shop.db, "roll")).toEqual([
      { fromDay: "2026-01-05", priceMinor: 2_600 },
      { fromDay: "2026-03-01", priceMinor: 2_700 },
    ]);
  });

  it("makes forecasts stale only where who sells the supply changes", async () => {
    await inTransaction(shop.db, async (tx) => {
      const forecast = { asOf: "2026-03-09", until: "2026-03-09", edition: 1, madeAt: by.now, ground: "{}" };
      await tx.forecast.create({ data: forecast });
    });
    await saveOffer(shop.db, { ...offer, priceMinor: 2_900, packAmount: units(175) }, day("2026-03-09"));
    expect(await isForecastStale()).toBe(false);
    await saveOffer(shop.db, { ...offer, retired: true });
    expect(await isForecastStale()).toBe(true);
  });
});

describe("what came and is not what the offer says", () => {
  it("is told with the order that brought it last, and changes the offer as far as it is wanted", async () => {
    await order("o", 2);
    await recordReceipt(
      shop.db,
      receipt("r", { purchaseLineId: "o-line", packAmount: units(175), packTyped: "175", priceMinor: 2_800 }),
      by,
    );
    const [change] = await offerChangesOfPurchase(shop.db, "o");
    expect(change?.difference).toEqual({
      pack: { from: units(188), to: units(175) },
      price: { from: 2_600, to: 2_800, fromPacks: null },
    });
    const wanted = { offerId: "roll", price: false, pack: true };
    expect(await changeOffers(shop.db, [wanted], day("2026-03-10"))).toBe(1);
    expect(await theOffer()).toMatchObject({
      packAmount: units(175),
      pack: "roll of 175 sq ft",
      priceMinor: 2_600,
    });
    await changeOffers(shop.db, [{ ...wanted, price: true }], day("2026-03-10"));
    expect(await theOffer()).toMatchObject({ priceMinor: 2_800, breaks: offer.breaks });
    expect((await offerPricesOf(shop.db, "roll")).at(-1)).toEqual({
      fromDay: "2026-03-10",
      priceMinor: 2_800,
    });
    expect(await offerChangesOfPurchase(shop.db, "o")).toEqual([]);
    expect(await changeOffers(shop.db, [wanted], day("2026-03-10"))).toBe(0);
  });

  it("is put on the price break that the order reached", async () => {
    await order("o", 4);
    await recordReceipt(shop.db, receipt("r", { purchaseLineId: "o-line", priceMinor: 2_500 }), by);
    await changeOffers(shop.db, [{ offerId: "roll", price: true, pack: true }], day("2026-03-10"));
    expect(await theOffer()).toMatchObject({
      priceMinor: 2_600,
      breaks: [{ fromPacks: 4, priceMinor: 2_500 }],
    });
  });

  it("is not told of an order once a later one brought the same offer as it says", async () => {
    await order("o", 2);
    await recordReceipt(shop.db, receipt("r", { purchaseLineId: "o-line", priceMinor: 2_800 }), by);
    await order("p", 2);
    const later = { ...by, now: "2026-03-10T15:00:00.000Z" };
    await recordReceipt(shop.db, receipt("s", { purchaseLineId: "p-line" }), later);
    expect(await offerChangesOfPurchase(shop.db, "o")).toEqual([]);
    expect(await offerChangesOfPurchase(shop.db, "p")).toEqual([]);
  });
});

describe("prices paid and money spent", () => {
  it("are told by receipt in the shop's money, and not of what was taken back", async () => {
    await recordReceipt(shop.db, receipt("r"), by);
    const euro = { currency: "EUR", rateMillionths: 1_100_000, deliveryMinor: 500, receivedOn: "2026-03-10" };
    await recordReceipt(shop.db, receipt("s", { packs: 1, priceMinor: 2_000 }, euro), by);
    await recordReceipt(shop.db, receipt("t", { priceMinor: null }, { kind: "free" }), by);
    const paid = await pricesPaid(shop.db, { supplyId: "bubble" });
    // 26.00 and 20.00 × 1.10 for 188 sq ft.
    expect(paid.map((price) => price.perUnit)).toEqual([(2_600 * 10_000) / 188, (2_200 * 10_000) / 188]);
    // 2 × 26.00 and (20.00 + 5.00) × 1.10.
    expect(await spendingFrom(shop.db, "2026-01-01")).toMatchObject([
      { month: "2026-03", minor: 7_950, receipts: 2 },
    ]);
    const received = (await movementsOf(shop.db, "bubble", { limit: 10 })).filter(
      (row) => row.cause === "received",
    );
    const last = received.find((row) => row.value === 27_500_000);
    if (last === undefined) throw new Error("the second receipt booked its landed value");
    await reverseMovement(shop.db, last.id, "wrong box", { ...by, now: "2026-03-10T13:00:00.000Z" });
    expect(await pricesPaid(shop.db, { supplyId: "bubble" })).toHaveLength(1);
    expect(await spendingFrom(shop.db, "2026-01-01")).toMatchObject([{ minor: 5_200 }]);
  });
});

describe("a receipt in yen", () => {
  it("costs what its rate says in the shop's cents, though a yen has none", async () => {
    const yen = { currency: "JPY", rateMillionths: 6_700, deliveryMinor: 1_000 };
    await recordReceipt(shop.db, receipt("r", { packs: 1, priceMinor: 3_900 }, yen), by);
    // 4,900 yen at 0.0067 dollars are 32.83 dollars for 188 sq ft; without delivery 26.13.
    const bubble = (await stockOf(shop.db)).find((row) => row.supplyId === "bubble");
    expect(bubble?.unitCost).toBeCloseTo((3_283 * 10_000) / 188, 6);
    const [paid] = await pricesPaid(shop.db);
    expect(paid?.perUnit).toBeCloseTo((2_613 * 10_000) / 188, 6);
    expect(await spendingFrom(shop.db, "2026-01-01")).toMatchObject([{ minor: 3_283 }]);
  });
});

describe("a receipt of an order", () => {
  it("of more than was ordered, or from before it, is refused and nothing is booked", async () => {
    await order("o", 2);
    const more = receipt("r", { purchaseLineId: "o-line", packs: 3 });
    expect(await recordReceipt(shop.db, more, by)).toEqual({
      kind: "more-than-ordered",
      purchaseLineId: "o-line",
      packs: 2,
    });
    const early = receipt("r", { purchaseLineId: "o-line" }, { receivedOn: "2026-03-01" });
    expect(await recordReceipt(shop.db, early, by)).toEqual({
      kind: "before-order",
      purchaseLineId: "o-line",
      placedOn: "2026-03-02",
    });
    expect(await shop.db.receipt.count()).toBe(0);
    expect(await shop.db.movement.count()).toBe(0);
    const said = receipt("r", { purchaseLineId: "o-line", packs: 3, moreThanOrdered: true });
    expect(await recordReceipt(shop.db, said, by)).toEqual({ kind: "received" });
    expect((await stockOf(shop.db))[0]?.amount).toBe(units(3 * 188));
  });

  it("is booked together with what came along free, or not at all", async () => {
    await order("o", 2);
    const paid = receipt("r", { purchaseLineId: "o-line" });
    const free = receipt("f", { id: "f-1", supplyId: "paper", priceMinor: null }, { kind: "free" });
    const unknown = receipt("f", { supplyId: "none", priceMinor: null }, { kind: "free" });
    expect(await recordReceipts(shop.db, [paid, unknown], by)).toMatchObject({ kind: "unknown", id: "none" });
    expect(await shop.db.receipt.count()).toBe(0);
    expect(await recordReceipts(shop.db, [paid, free], by)).toEqual({ kind: "received" });
    expect(await recordReceipts(shop.db, [paid, free], by)).toEqual({ kind: "already-received" });
    expect(await shop.db.receipt.count()).toBe(2);
  });
});
