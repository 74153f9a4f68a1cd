import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { AMOUNT_PER_UNIT, amount } from "#lib/units/amount";
import { day } from "#lib/units/day";
import {
  changeDraft,
  deleteDraft,
  draftPurchase,
  draftPurchases,
  placeDraft,
} from "#prisma/records/purchase-drafts";
import { purchaseOf, purchasesOf } from "#prisma/records/purchase-orders";
import {
  cancelPurchase,
  cancelPurchaseLine,
  openPurchaseLines,
  type PurchaseBody,
  placePurchase,
} from "#prisma/records/purchases";
import { recordReceipt } from "#prisma/records/receipts";
import { saveSupplier } from "#prisma/records/suppliers";
import { checkInputs } from "#prisma/records/weekly-checks";
import { type ShopFixture, shopFixture } from "./shop-fixture";

const units = (n: number) => amount(n * AMOUNT_PER_UNIT);
const by = { device: "test", now: "2026-03-10T12:00:00.000Z" };

function line(id: string, supplyId: string, packs: number): PurchaseBody["lines"][number] {
  const pack = { packAmount: units(100), priceMinor: 700, offerId: null };
  return { id, supplyId, packs, expectedOn: "2026-03-09", ...pack };
}

function order(id: string, changes: Partial<PurchaseBody> = {}): PurchaseBody {
  const lines = [line(`${id}-paper`, "paper", 3), line(`${id}-bubble`, "bubble", 2)];
  return {
    id,
    supplierId: "north",
    placedOn: "2026-03-02",
    deliveryMinor: 500,
    note: null,
    lines,
    ...changes,
  };
}

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
  await saveSupplier(shop.db, { id: "north", name: "Invented supplier", leadTimeDays: 6 });
});
afterEach(() => shop.close());

async function paperOnOrder(on: string): Promise<number> {
  const found = await checkInputs(shop.db, day(on));
  const paper = found?.inputs.find((input) => input.supplyId === "paper");
  return (paper?.onOrder ?? []).reduce((sum, arrival) => sum + arrival.amount, 0) / AMOUNT_PER_UNIT;
}

describe("a draft of an order", () => {
  it("is on order nowhere, and cannot be received or cancelled", async () => {
    expect(await draftPurchase(shop.db, order("o"), by)).toEqual({ kind: "written" });
    expect(await openPurchaseLines(shop.db)).toEqual([]);
    expect(await paperOnOrder("2026-03-10")).toBe(0);
    expect(await cancelPurchaseLine(shop.db, "o-paper", "2026-03-10")).toEqual({ kind: "not-open" });
    expect(await cancelPurchase(shop.db, "o", "2026-03-10")).toEqual({ kind: "not-open" });
    const outcome = await recordReceipt(
      shop.db,
      {
        id: "r",
        supplierId: "north",
        receivedOn: "2026-03-10",
        kind: "paid",
        currency: "USD",
        rateMillionths: 1_000_000,
        taxIncluded: true,
        deliveryMinor: 0,
        taxMinor: 0,
        note: null,
        lines: [
          {
            id: "r-1",
            supplyId: "paper",
            purchaseLineId: "o-paper",
            packs: 3,
            packAmount: units(100),
            packTyped: "100",
            priceMinor: 700,
          },
        ],
      },
      by,
    );
    expect(outcome).toEqual({ kind: "line-not-open", purchaseLineId: "o-paper" });
    expect((await purchaseOf(shop.db, "o"))?.status).toBe("draft");
  });

  it("is the same order however often it is sent, and counts once", async () => {
    await draftPurchase(shop.db, order("o"), by);
    const again = order("o", { lines: [line("o-other", "paper", 9)] });
    expect(await draftPurchase(shop.db, again, by)).toEqual({ kind: "already-written" });
    expect(await placePurchase(shop.db, again, by)).toEqual({ kind: "already-placed" });
    expect((await purchaseOf(shop.db, "o"))?.lines.map((each) => each.packs)).toEqual([2, 3]);
  });

  it("comes with others in one step: all of them or none, and each once", async () => {
    expect(await draftPurchases(shop.db, [order("o"), order("p")], by)).toBe(2);
    expect(await draftPurchases(shop.db, [order("o"), order("q")], by)).toBe(1);
    const nobody = order("s", { supplierId: "nobody" });
    await expect(draftPurchases(shop.db, [order("r"), nobody], by)).rejects.toThrow();
    const written = await Promise.all(["o", "p", "q", "r", "s"].map((id) => purchaseOf(shop.db, id)));
    expect(written.map((each) => each?.status ?? "none")).toEqual([
      "draft",
      "draft",
      "draft",
      "none",
      "none",
    ]);
  });

  it("takes other lines, another delivery and another note", async () => {
    await draftPurchase(shop.db, order("o"), by);
    const change = { deliveryMinor: null, note: "by phone", lines: [line("o-paper", "paper", 5)] };
    expect(await changeDraft(shop.db, "o", change)).toEqual({ kind: "changed" });
    const changed = await purchaseOf(shop.db, "o");
    expect(changed).toMatchObject({ deliveryMinor: null, note: "by phone", lines: [{ packs: 5 }] });
    expect(await changeDraft(shop.db, "none", change)).toEqual({ kind: "unknown" });
  });

  it("is on order from the day it is placed, expected after the supplier's lead time unless a day is given", async () => {
    await draftPurchase(shop.db, order("o"), by);
    const placing = { placedOn: day("2026-03-05"), placedAt: "15:30" };
    expect(await placeDraft(shop.db, "o", placing)).toEqual({ kind: "placed" });
    expect(await placeDraft(shop.db, "o", placing)).toEqual({ kind: "already-placed" });
    expect(await paperOnOrder("2026-03-04")).toBe(0);
    expect(await paperOnOrder("2026-03-05")).toBe(300);
    const placed = await purchaseOf(shop.db, "o");
    expect(placed).toMatchObject({ status: "placed", placedOn: "2026-03-05", placedAt: "15:30" });
    expect(placed?.lines.map((each) => each.open?.expectedOn)).toEqual(["2026-03-11", "2026-03-11"]);
    await draftPurchase(shop.db, order("p"), by);
    await placeDraft(shop.db, "p", { ...placing, expectedOn: day("2026-03-20") });
    expect((await purchaseOf(shop.db, "p"))?.lines[0]?.expectedOn).toBe("2026-03-20");
  });

  it("cannot be placed empty, nor changed or thrown away once placed", async () => {
    await draftPurchase(shop.db, order("o", { lines: [] }), by);
    const placing = { placedOn: day("2026-03-05"), placedAt: null };
    expect(await placeDraft(shop.db, "o", placing)).toEqual({ kind: "empty" });
    expect(await placeDraft(shop.db, "none", placing)).toEqual({ kind: "unknown" });
    expect(await deleteDraft(shop.db, "o")).toEqual({ kind: "deleted" });
    expect(await purchaseOf(shop.db, "o")).toBeNull();
    await placePurchase(shop.db, order("p"), by);
    const change = { deliveryMinor: null, note: null, lines: [] };
    expect(await changeDraft(shop.db, "p", change)).toEqual({ kind: "not-draft" });
    expect(await deleteDraft(shop.db, "p")).toEqual({ kind: "not-draft" });
    expect((await purchaseOf(shop.db, "p"))?.lines).toHaveLength(2);
  });
});

describe("orders", () => {
  it("are cancelled as a whole or by line; what came stays and tells the status", async () => {
    await placePurchase(shop.db, order("o"), by);
    await cancelPurchaseLine(shop.db, "o-paper", "2026-03-05");
    expect((await purchaseOf(shop.db, "o"))?.status).toBe("placed");
    expect(await cancelPurchase(shop.db, "o", "2026-03-06")).toEqual({ kind: "cancelled" });
    const cancelled = await purchaseOf(shop.db, "o");
    expect(cancelled?.status).toBe("cancelled");
    expect(cancelled?.lines.map((each) => each.closedOn)).toEqual(["2026-03-06", "2026-03-05"]);
    expect(await cancelPurchase(shop.db, "o", "2026-03-06")).toEqual({ kind: "not-open" });
  });

  it("stand with drafts and those on order first, then the latest of the others", async () => {
    for (const [id, placedOn] of [
      ["old", "2026-01-02"],
      ["older", "2025-12-02"],
      ["oldest", "2025-11-02"],
    ] as const) {
      await placePurchase(shop.db, order(id, { placedOn }), by);
      await cancelPurchase(shop.db, id, placedOn);
    }
    await placePurchase(shop.db, order("open", { placedOn: "2025-10-02" }), by);
    await draftPurchase(shop.db, order("draft", { placedOn: "2025-10-01", lines: [] }), by);
    const ids = (await purchasesOf(shop.db, { others: 2 })).map((each) => each.id);
    expect(ids).toEqual(["open", "draft", "old", "older"]);
  });
});
