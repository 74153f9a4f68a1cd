import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { inTransaction } from "#prisma/client";
import { lastSaidCheck } from "#prisma/records/said-checks";
import { saveSupplier } from "#prisma/records/suppliers";
import { type ShopFixture, shopFixture } from "./shop-fixture";

const today = day("2026-03-18");
const parts = (units: number) => BigInt(amountOfUnits(units));
let shop: ShopFixture;

/** A check of 11 March: 70 sheets a week, 60 on hand, to order; 14 of bubble, enough. */
beforeEach(async () => {
  shop = await shopFixture();
  await saveSupplier(shop.db, { id: "north", name: "Invented supplier", leadTimeDays: 6 });
  await inTransaction(shop.db, async (tx) => {
    await tx.weeklyCheck.create({
      data: { id: "said", day: "2026-03-11", saidAt: "then", finding: "Order." },
    });
    const row = { checkId: "said", onOrder: 0n, method: "m", sentence: "s", reorderPoint: null };
    await tx.weeklyCheckRow.createMany({
      data: [
        {
          ...row,
          supplyId: "paper",
          position: 0,
          onHand: parts(60),
          usePerWeek: parts(70),
          action: "order-today",
        },
        {
          ...row,
          supplyId: "bubble",
          position: 1,
          onHand: parts(90),
          usePerWeek: parts(14),
          action: "enough",
        },
        { ...row, supplyId: "carton-8", position: 2, onHand: null, usePerWeek: null, action: "count" },
      ],
    });
  });
});
afterEach(() => shop.close());

async function moved(supplyId: string, on: string, cause: string, units: number, unusual = false) {
  await inTransaction(shop.db, async (tx) => {
    await tx.supplyDay.create({
      data: { supplyId, day: on, cause, unusual, amount: parts(units), value: 0n },
    });
  });
}
const rowOf = async (supplyId: string) =>
  (await lastSaidCheck(shop.db, today))?.rows.find((row) => row.supplyId === supplyId);

describe("the last check that was said", () => {
  it("has what was expected since, and what was used", async () => {
    await moved("paper", "2026-03-11", "packed", -500);
    await moved("paper", "2026-03-12", "packed", -30);
    await moved("paper", "2026-03-14", "spoilt", -5);
    await moved("paper", "2026-03-15", "returned", 2);
    await moved("paper", "2026-03-15", "packed", -9, true);
    // The week after the check: 70 expected; used 30 + 5 - 2, without what was unusual.
    expect(await rowOf("paper")).toEqual({
      supplyId: "paper",
      expected: amountOfUnits(70),
      used: amountOfUnits(33),
      ranOut: false,
      wasToOrder: true,
      wasOrdered: false,
    });
    expect(await rowOf("carton-8")).toMatchObject({ expected: null, used: 0, ranOut: false });
  });

  it("expects nothing of closed days", async () => {
    await inTransaction(shop.db, async (tx) => {
      await tx.closedSpan.create({
        data: { id: "c", fromDay: "2026-03-14", toDay: "2026-03-17", words: "away" },
      });
    });
    expect((await rowOf("bubble"))?.expected).toBe(amountOfUnits(6));
  });

  it("says what the book ran out of, also where more came after", async () => {
    await moved("paper", "2026-03-13", "packed", -60);
    await moved("paper", "2026-03-14", "received", 400);
    expect((await rowOf("paper"))?.ranOut).toBe(true);
    expect((await rowOf("bubble"))?.ranOut).toBe(false);
  });

  it("says what was ordered since, drafts left out", async () => {
    await inTransaction(shop.db, async (tx) => {
      for (const [id, state, supplyId] of [
        ["a", "placed", "paper"],
        ["b", "draft", "bubble"],
      ] as const) {
        await tx.purchase.create({
          data: { id, supplierId: "north", placedOn: "2026-03-12", recordedAt: "then", state },
        });
        await tx.purchaseLine.create({
          data: {
            id: `${id}-1`,
            purchaseId: id,
            supplyId,
            packs: 1,
            packAmount: 1n,
            expectedOn: "2026-03-18",
          },
        });
      }
    });
    expect((await rowOf("paper"))?.wasOrdered).toBe(true);
    expect((await rowOf("bubble"))?.wasOrdered).toBe(false);
  });

  it("is none of the last few days, and none older than five weeks", async () => {
    expect(await lastSaidCheck(shop.db, day("2026-03-14"))).toBeNull();
    expect((await lastSaidCheck(shop.db, day("2026-03-16")))?.saidOn).toBe("2026-03-11");
    expect(await lastSaidCheck(shop.db, day("2026-04-20"))).toBeNull();
  });
});
