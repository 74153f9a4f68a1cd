import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { AMOUNT_PER_UNIT, amount } from "#lib/units/amount";
import { PLAIN_SUPPLY } from "#prisma/records/plain-supply";
import { purchaseOf } from "#prisma/records/purchase-orders";
import { placePurchase } from "#prisma/records/purchases";
import { type ReceiptBody, recordReceipt } from "#prisma/records/receipts";
import { proveRollUps } from "#prisma/records/roll-ups";
import { recordSpoilage } from "#prisma/records/spoilage";
import { saveSupplier } from "#prisma/records/suppliers";
import { saveSupply } from "#prisma/records/supplies";
import { type ShopFixture, shopFixture } from "./shop-fixture";

const units = (n: number) => amount(n * AMOUNT_PER_UNIT);
const by = { device: "test", now: "2026-03-10T12:00:00.000Z" };
const RUNS = 6;

let shop: ShopFixture;
let made = 0;
beforeAll(async () => {
  shop = await shopFixture();
  await saveSupplier(shop.db, { id: "north", name: "Invented supplier", leadTimeDays: 6 });
});
afterAll(() => shop.close());

/** One delivery: its packs, what is in one, what one cost, and the delivery charge on its invoice. */
type Part = {
  readonly packs: number;
  readonly sheets: number;
  readonly price: number;
  readonly delivery: number;
};

const part = fc.record({
  packs: fc.integer({ min: 1, max: 6 }),
  sheets: fc.integer({ min: 1, max: 300 }),
  price: fc.nat(5_000),
  delivery: fc.nat(900),
});

function receiptBody(id: string, supplyId: string, parts: readonly Part[]): ReceiptBody {
  return {
    id,
    supplierId: "north",
    receivedOn: "2026-03-10",
    kind: "paid",
    currency: "USD",
    rateMillionths: 1_000_000,
    taxIncluded: true,
    deliveryMinor: parts.reduce((sum, each) => sum + each.delivery, 0),
    taxMinor: 0,
    note: null,
    lines: parts.map((each, index) => ({
      id: `${id}-${index}`,
      supplyId,
      purchaseLineId: null,
      packs: each.packs,
      packAmount: units(each.sheets),
      packTyped: `${each.sheets} sheets`,
      priceMinor: each.price,
    })),
  };
}

/** A new supply with this on the shelf: below zero where more was used than ever came. */
async function supplyWith(onShelf: number): Promise<string> {
  made += 1;
  const id = `paper-${made}`;
  await saveSupply(shop.db, { ...PLAIN_SUPPLY, id, name: id, kind: "paper", useUnit: "sheet" });
  if (onShelf > 0) {
    const first = { packs: 1, sheets: onShelf, price: 321, delivery: 0 };
    await recordReceipt(shop.db, receiptBody(`${id}-first`, id, [first]), by);
  }
  if (onShelf < 0) {
    const amountUsed = { amount: units(-onShelf), typedValue: String(-onShelf), typedUnit: "sheets" };
    const spoilt = { supplyId: id, ...amountUsed, words: "used", on: "2026-03-10" };
    await recordSpoilage(shop.db, spoilt, by);
  }
  return id;
}

/** Receives an order in as many deliveries as there are parts, each keeping the rest on order. */
async function receiveInParts(supplyId: string, parts: readonly Part[]): Promise<void> {
  const orderId = `${supplyId}-order`;
  const all = parts.reduce((sum, each) => sum + each.packs, 0);
  const line = {
    id: `${orderId}-line`,
    supplyId,
    offerId: null,
    packs: all,
    packAmount: units(100),
    priceMinor: 700,
    expectedOn: "2026-03-09",
  };
  const head = { id: orderId, supplierId: "north", placedOn: "2026-03-02", note: null };
  await placePurchase(shop.db, { ...head, lines: [line] }, by);
  let rest = all;
  for (const [index, each] of parts.entries()) {
    const purchaseLineId = `${line.id}${"-rest".repeat(index)}`;
    rest -= each.packs;
    const body = receiptBody(`${orderId}-${index}`, supplyId, [each]);
    const outcome = await recordReceipt(
      shop.db,
      {
        ...body,
        lines: body.lines.map((one) => ({ ...one, purchaseLineId })),
        restStillComes: rest === 0 ? [] : [{ purchaseLineId, packs: rest, expectedOn: "2026-03-16" }],
      },
      by,
    );
    expect(outcome).toEqual({ kind: "received" });
  }
  expect((await purchaseOf(shop.db, orderId))?.status).toBe("received");
}

async function stateOf(supplyId: string) {
  const stock = await shop.db.supplyStock.findUniqueOrThrow({ where: { supplyId } });
  const received = await shop.db.movement.aggregate({
    where: { supplyId, cause: "received" },
    _sum: { amount: true, value: true },
  });
  return { stock, received: received._sum };
}

describe("receiving in parts", () => {
  // Stock at zero or more, nothing used in between: amounts and values only add up, so that the order does not matter.
  it("leaves the stock, its value and its moving cost as receiving at once does", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(0, 40, 250),
        fc.array(part, { minLength: 2, maxLength: 4 }),
        async (onShelf, parts) => {
          const [once, inParts] = [await supplyWith(onShelf), await supplyWith(onShelf)];
          await recordReceipt(shop.db, receiptBody(`${once}-all`, once, parts), by);
          await receiveInParts(inParts, parts);
          const [whole, pieced] = [await stateOf(once), await stateOf(inParts)];
          expect(pieced.received).toEqual(whole.received);
          expect(pieced.stock.amount).toBe(whole.stock.amount);
          expect(pieced.stock.value).toBe(whole.stock.value);
          // The unit cost is a ratio: the same ratio, whatever its terms.
          expect(pieced.stock.costValue * whole.stock.costAmount).toBe(
            whole.stock.costValue * pieced.stock.costAmount,
          );
        },
      ),
      { numRuns: RUNS },
    );
  });

  // Below zero the first delivery puts right what was used before it, at its own cost. So the value and the cost depend
  // on what came first; amounts and what was paid do not.
  it("leaves the same stock and the same money paid where more was used than there was", async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(part, { minLength: 2, maxLength: 3 }), async (parts) => {
        const [once, inParts] = [await supplyWith(-30), await supplyWith(-30)];
        await recordReceipt(shop.db, receiptBody(`${once}-all`, once, parts), by);
        await receiveInParts(inParts, parts);
        const [whole, pieced] = [await stateOf(once), await stateOf(inParts)];
        expect(pieced.received).toEqual(whole.received);
        expect(pieced.stock.amount).toBe(whole.stock.amount);
      }),
      { numRuns: RUNS / 3 },
    );
    expect(await proveRollUps(shop.db)).toEqual({ equal: true, differences: [] });
  });
});
