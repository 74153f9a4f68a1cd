import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { day } from "#lib/units/day";
import { inTransaction } from "#prisma/client";
import { supplierDeliveries } from "#prisma/records/supplier-deliveries";
import { saveSupplier } from "#prisma/records/suppliers";
import { type ShopFixture, shopFixture } from "./shop-fixture";

const today = day("2026-03-20");
let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
  await saveSupplier(shop.db, { id: "north", name: "Invented supplier", leadTimeDays: 6 });
});
afterEach(() => shop.close());

type Line = {
  readonly supplyId: string;
  readonly packs: number;
  readonly cameOn?: string;
  readonly cancelledOn?: string;
};

/** An order with its lines; a line that came has a receipt of its own. */
async function ordered(
  id: string,
  placedOn: string,
  lines: readonly Line[],
  more: { readonly state?: string; readonly placedAt?: string } = {},
): Promise<void> {
  await inTransaction(shop.db, async (tx) => {
    await tx.purchase.create({ data: { id, supplierId: "north", placedOn, recordedAt: "now", ...more } });
    for (const [index, { supplyId, packs, cameOn, cancelledOn }] of lines.entries()) {
      const lineId = `${id}-${index}`;
      await tx.purchaseLine.create({
        data: {
          id: lineId,
          purchaseId: id,
          supplyId,
          packs,
          packAmount: 12_000n,
          expectedOn: placedOn,
          closedOn: cameOn ?? cancelledOn ?? null,
          closedAs: cameOn === undefined ? ((cancelledOn && "cancelled") ?? null) : "received",
        },
      });
      if (cameOn === undefined) continue;
      await tx.receipt.create({
        data: {
          id: `${lineId}-receipt`,
          receivedOn: cameOn,
          effectiveAt: "now",
          recordedAt: "now",
          recordedBy: "test",
          kind: "paid",
          currency: "USD",
          lines: {
            create: {
              id: `${lineId}-came`,
              supplyId,
              purchaseLineId: lineId,
              packs,
              packAmount: 12_000n,
              packTyped: "1",
            },
          },
        },
      });
    }
  });
}

async function north() {
  const found = (await supplierDeliveries(shop.db, today)).get("north");
  if (found === undefined) throw new RangeError("the supplier is in use");
  return found;
}
const lateDays = async () => (await north()).late.map(({ days, share, isOpen }) => [days, share, isOpen]);

describe("how a supplier delivers", () => {
  it("is its promise alone before the first order", async () => {
    const { terms, belief, late } = await north();
    expect(terms).toMatchObject({ promisedDays: 6, inWorkingDays: false, orderDays: [1, 2, 3, 4, 5, 6, 7] });
    expect(belief.promiseShare).toBe(1);
    expect(late).toEqual([]);
  });

  it("counts an order once, its supplies alike and parts by their packs", async () => {
    await ordered("a", "2026-03-02", [
      { supplyId: "paper", packs: 3, cameOn: "2026-03-08" },
      { supplyId: "paper", packs: 1, cameOn: "2026-03-12" },
      { supplyId: "bubble", packs: 5, cameOn: "2026-03-12" },
    ]);
    expect(await lateDays()).toEqual([
      [0, 0.375, false],
      [4, 0.625, false],
    ]);
  });

  it("counts what is overdue as open, and neither drafts nor what was cancelled", async () => {
    await ordered("late", "2026-03-09", [{ supplyId: "paper", packs: 1 }]);
    await ordered("draft", "2026-03-01", [{ supplyId: "paper", packs: 1 }], { state: "draft" });
    await ordered("gone", "2026-03-01", [{ supplyId: "paper", packs: 1, cancelledOn: "2026-03-04" }]);
    expect(await lateDays()).toEqual([[6, 1, true]]);
  });

  it("takes an order after the cut-off for one of the next day", async () => {
    await inTransaction(shop.db, async (tx) => {
      await tx.supplier.update({ where: { id: "north" }, data: { cutOff: "14:00" } });
    });
    const came = [{ supplyId: "paper", packs: 1, cameOn: "2026-03-08" }];
    await ordered("before", "2026-03-02", came, { placedAt: "13:59" });
    await ordered("after", "2026-03-02", came, { placedAt: "14:01" });
    expect((await lateDays()).toSorted()).toEqual([
      [-1, 1, false],
      [0, 1, false],
    ]);
  });

  it("reads order days, closed days and the peak of the supplier", async () => {
    await inTransaction(shop.db, async (tx) => {
      await tx.supplier.update({
        where: { id: "north" },
        data: { orderDays: "24", workingDays: true, peakFrom: "10-01", peakTo: "12-20", peakExtraDays: 4 },
      });
      await tx.supplierClosure.create({
        data: { supplierId: "north", fromDay: "2026-12-24", toDay: "2027-01-03" },
      });
    });
    expect((await north()).terms).toEqual({
      promisedDays: 6,
      inWorkingDays: true,
      orderDays: [2, 4],
      closed: [{ fromDay: "2026-12-24", toDay: "2027-01-03" }],
      peak: { from: "10-01", to: "12-20", extraDays: 4 },
    });
  });
});
