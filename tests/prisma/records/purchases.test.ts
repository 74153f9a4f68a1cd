import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { AMOUNT_PER_UNIT, amount } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { movementsOf, reverseMovement } from "#prisma/records/movements";
import { cancelPurchaseLine, openPurchaseLines, placePurchase } from "#prisma/records/purchases";
import { type ReceiptBody, recordReceipt } from "#prisma/records/receipts";
import { saveSupplier } from "#prisma/records/suppliers";
import { stockOf } from "#prisma/records/supplies";
import { checkInputs } from "#prisma/records/weekly-checks";
import { type ShopFixture, shopFixture } from "./shop-fixture";

const units = (n: number) => amount(n * AMOUNT_PER_UNIT);
const by = { device: "test", now: "2026-03-10T12:00:00.000Z" };

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
  await saveSupplier(shop.db, {
    id: "north",
    name: "Invented supplier",
    leadTimeDays: 6,
    deliveryMinor: 500,
    freeDeliveryMinor: null,
    note: null,
    retired: false,
  });
  await placePurchase(
    shop.db,
    {
      id: "order",
      supplierId: "north",
      placedOn: "2026-03-02",
      note: null,
      lines: [
        {
          id: "line",
          supplyId: "paper",
          offerId: null,
          packs: 3,
          packAmount: units(100),
          priceMinor: 700,
          expectedOn: "2026-03-09",
        },
      ],
    },
    by,
  );
});
afterEach(() => shop.close());

function receipt(changes: Partial<ReceiptBody> = {}): ReceiptBody {
  return {
    id: "receipt",
    supplierId: "north",
    receivedOn: "2026-03-10",
    kind: "paid",
    currency: "USD",
    rateMillionths: 1_000_000,
    taxIncluded: true,
    deliveryMinor: 600,
    taxMinor: 0,
    note: null,
    lines: [paperLine()],
    ...changes,
  };
}

/** The paper as it came: packs of 98 sheets instead of 100. */
function paperLine(): ReceiptBody["lines"][number] {
  return {
    id: "rl",
    supplyId: "paper",
    purchaseLineId: "line",
    packs: 3,
    packAmount: units(98),
    packTyped: "98 sheets",
    priceMinor: 700,
  };
}

async function onOrderOn(today: string): Promise<number> {
  const found = await checkInputs(shop.db, day(today));
  const paper = found?.inputs.find((input) => input.supplyId === "paper");
  return (paper?.onOrder ?? []).reduce((sum, line) => sum + line.amount, 0) / AMOUNT_PER_UNIT;
}

describe("an order placed with a supplier", () => {
  it("is on order from the day it was placed to the day it is received, as seen from any day", async () => {
    await recordReceipt(shop.db, receipt(), by);
    expect(await onOrderOn("2026-03-01")).toBe(0);
    expect(await onOrderOn("2026-03-02")).toBe(300);
    expect(await onOrderOn("2026-03-09")).toBe(300);
    expect(await onOrderOn("2026-03-10")).toBe(0);
    expect(await openPurchaseLines(shop.db)).toEqual([]);
  });

  it("comes in with the real pack size and with delivery in its cost", async () => {
    await recordReceipt(shop.db, receipt(), by);
    const stock = (await stockOf(shop.db)).find((row) => row.supplyId === "paper");
    expect(stock?.amount).toBe(units(294));
    // (3 × 700 + 600) / 294 sheets = 9.18367 minor units a sheet.
    expect(stock?.unitCost).toBeCloseTo((2700 / 294) * 10_000, 6);
  });

  it("keeps the rest on order where part is still on its way", async () => {
    const lines = receipt().lines.map((line) => ({ ...line, packs: 1 }));
    const rest = [{ purchaseLineId: "line", packs: 2, expectedOn: "2026-03-16" }];
    await recordReceipt(shop.db, receipt({ lines, restStillComes: rest }), by);
    expect(await openPurchaseLines(shop.db)).toMatchObject([{ packs: 2, expectedOn: "2026-03-16" }]);
    expect(await onOrderOn("2026-03-10")).toBe(200);
  });

  it("is no longer on order once cancelled", async () => {
    expect(await cancelPurchaseLine(shop.db, "line", "2026-03-05")).toEqual({ kind: "cancelled" });
    expect(await cancelPurchaseLine(shop.db, "line", "2026-03-05")).toEqual({ kind: "not-open" });
    expect(await onOrderOn("2026-03-04")).toBe(300);
    expect(await onOrderOn("2026-03-05")).toBe(0);
  });
});

describe("a receipt", () => {
  it("is booked once however often it is sent", async () => {
    await recordReceipt(shop.db, receipt(), by);
    expect(await recordReceipt(shop.db, receipt(), by)).toEqual({ kind: "already-received" });
    expect((await stockOf(shop.db)).find((row) => row.supplyId === "paper")?.amount).toBe(units(294));
  });

  it("does not close an order line a second time: nothing is booked", async () => {
    await recordReceipt(shop.db, receipt(), by);
    const again = receipt({ id: "again", receivedOn: "2026-03-12", lines: [{ ...paperLine(), id: "rl-2" }] });
    const outcome = await recordReceipt(shop.db, again, { ...by, now: "2026-03-12T12:00:00.000Z" });
    expect(outcome).toEqual({ kind: "line-not-open", purchaseLineId: "line" });
    expect((await stockOf(shop.db)).find((row) => row.supplyId === "paper")?.amount).toBe(units(294));
    expect(await shop.db.receipt.count()).toBe(1);
    expect(await shop.db.purchaseLine.findMany()).toMatchObject([{ closedOn: "2026-03-10" }]);
  });

  it("does not close an order line that was cancelled, nor one of another supply, nor one that never was", async () => {
    const refused = { kind: "line-not-open" };
    const ofBubble = receipt({ lines: [{ ...paperLine(), supplyId: "bubble" }] });
    expect(await recordReceipt(shop.db, ofBubble, by)).toMatchObject(refused);
    const ofNone = receipt({ lines: [{ ...paperLine(), purchaseLineId: "none" }] });
    expect(await recordReceipt(shop.db, ofNone, by)).toMatchObject(refused);
    await cancelPurchaseLine(shop.db, "line", "2026-03-05");
    expect(await recordReceipt(shop.db, receipt(), by)).toMatchObject(refused);
    expect(await shop.db.receipt.count()).toBe(0);
    expect(await shop.db.movement.count()).toBe(0);
    expect(await shop.db.purchaseLine.findMany()).toMatchObject([{ closedAs: "cancelled" }]);
  });

  it("closes an order line once where it came in two sorts of pack", async () => {
    const small = { ...paperLine(), id: "rl-2", packs: 1, packAmount: units(50) };
    const rest = [{ purchaseLineId: "line", packs: 1, expectedOn: "2026-03-16" }];
    const both = receipt({ lines: [{ ...paperLine(), packs: 1 }, small], restStillComes: rest });
    expect(await recordReceipt(shop.db, both, by)).toEqual({ kind: "received" });
    expect(await openPurchaseLines(shop.db)).toMatchObject([{ id: "line-rest", packs: 1 }]);
  });

  it("of free paper costs nothing and does not dilute the price paid", async () => {
    await recordReceipt(shop.db, receipt(), by);
    const before = (await stockOf(shop.db)).find((row) => row.supplyId === "paper")?.unitCost;
    const lines = [
      {
        id: "free-1",
        supplyId: "paper",
        purchaseLineId: null,
        packs: 1,
        packAmount: units(50),
        packTyped: "a bag",
        priceMinor: null,
      },
    ];
    await recordReceipt(shop.db, receipt({ id: "free", kind: "free", lines, deliveryMinor: 0 }), by);
    const after = (await stockOf(shop.db)).find((row) => row.supplyId === "paper");
    expect(after?.amount).toBe(units(344));
    expect(after?.unitCost).toBe(before);
  });

  it("can be taken back once", async () => {
    const lines = receipt().lines.map((line) => ({ ...line, packs: 1, packAmount: units(100) }));
    await recordReceipt(shop.db, receipt({ lines, deliveryMinor: 0 }), by);
    const rows = await movementsOf(shop.db, "paper", { limit: 10 });
    const received = rows.find((row) => row.cause === "received");
    expect(received?.value).toBe(7_000_000);
    if (received === undefined) throw new Error("the receipt booked a movement");
    expect(await reverseMovement(shop.db, received.id, "wrong box", by)).toEqual({ kind: "reversed" });
    expect(await reverseMovement(shop.db, received.id, "wrong box", by)).toEqual({
      kind: "already-reversed",
    });
    expect((await stockOf(shop.db)).find((row) => row.supplyId === "paper")?.amount).toBe(0);
  });
});
