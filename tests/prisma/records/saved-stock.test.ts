import { afterEach, beforeEach, expect, it } from "vitest";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { type ReceiptBody, recordReceipt } from "#prisma/records/receipts";
import { savedStock } from "#prisma/records/saved-stock";
import { pricedShop } from "./priced-shop";
import type { ShopFixture } from "./shop-fixture";

let shop: ShopFixture;
beforeEach(async () => {
  shop = await pricedShop();
});
afterEach(() => shop.close());

async function came(kind: ReceiptBody["kind"], receivedOn: string, units: number): Promise<void> {
  const id = `${kind}-${receivedOn}`;
  const line = {
    id,
    supplyId: "paper",
    purchaseLineId: null,
    packs: 1,
    priceMinor: kind === "paid" ? 700 : null,
  };
  await recordReceipt(
    shop.db,
    {
      id,
      supplierId: null,
      receivedOn,
      kind,
      currency: "USD",
      rateMillionths: 1_000_000,
      taxIncluded: true,
      deliveryMinor: 0,
      taxMinor: 0,
      note: null,
      lines: [{ ...line, packAmount: amountOfUnits(units), packTyped: String(units) }],
    },
    { device: "desk", now: `${receivedOn}T12:00:00.000Z` },
  );
}

it("saved stock is what came in saved or free in the span, and nothing that was paid for", async () => {
  await came("saved", "2025-12-31", 5);
  await came("saved", "2026-01-02", 40);
  await came("free", "2026-02-02", 20);
  await came("paid", "2026-02-03", 100);
  const year = { from: day("2026-01-01"), to: day("2026-12-31") };
  expect(await savedStock(shop.db, year)).toEqual([
    { supplyId: "paper", name: "Packing paper", amount: amountOfUnits(60) },
  ]);
  expect(await savedStock(shop.db, { from: day("2026-03-01"), to: day("2026-12-31") })).toEqual([]);
});
