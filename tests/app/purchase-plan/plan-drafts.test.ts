import { describe, expect, it } from "vitest";
import { planDrafts } from "#app/purchase-plan/plan-drafts.ts";
import { purchaseDrafts } from "#app/this-week/purchase-draft.ts";
import type { PurchasePlan } from "#lib/purchasing/plan/purchase-plan";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";
import type { Offer, Supplier } from "#prisma/records/suppliers";
import { checkRow } from "../this-week/check-row-fixture";

const marram: Supplier = {
  id: "marram",
  name: "Marram Supply",
  leadTimeDays: 9,
  deliveryMinor: 895,
  freeDeliveryMinor: 9000,
  leastOrderMinor: null,
  workingDays: false,
  orderDays: "1234567",
  cutOff: null,
  peakFrom: null,
  peakTo: null,
  peakExtraDays: 0,
  note: null,
  retired: false,
};
const offer = (id: string, supplyId: string, priceMinor: number | null = 3800): Offer => ({
  id,
  supplyId,
  supplierId: "marram",
  pack: "roll",
  packAmount: amountOfUnits(300),
  packTyped: "300",
  priceMinor,
  breakKind: "all-units",
  volumeMl: null,
  volumeTyped: null,
  soldOut: false,
  mostPacksAMonth: null,
  retired: false,
  breaks: [],
});
const offers = [offer("roll", "bubble"), offer("tape", "tape", null), offer("paper", "paper")];
const rows = [
  checkRow(),
  checkRow({ supplyId: "tape", supply: "Carton tape", offerId: "tape" }),
  checkRow({
    supplyId: "paper",
    supply: "Packing paper",
    offerId: "paper",
    action: "order-later",
    orderByDate: day("2026-12-14"),
  }),
];

function draftsOf(lines: PurchasePlan["orders"][number]["lines"]) {
  const plan = {
    orders: [{ supplierId: "marram", week: 0, lines, goodsMinor: 0, deliveryMinor: 0 }],
    stock: ["bubble", "paper"].map((supplyId) => ({ supplyId, after: [], end: [] })),
    reasons: [{ offerId: "paper", reasons: [{ kind: "shares-delivery", neededWeek: 2 }] }],
  } as unknown as PurchasePlan;
  return planDrafts(plan, {
    today: day("2026-11-25"),
    rows,
    offers,
    suppliers: [marram],
    alone: purchaseDrafts(rows, offers, [marram]),
    inMoney: String,
    nameOf: (id) => rows.find((row) => row.supplyId === id)?.supply ?? id,
    arrivalOf: (id) => day(id === "paper" ? "2026-12-08" : "2026-12-04"),
  });
}

describe("this week's orders by the plan", () => {
  it("take the plan's packs with their reasons, and keep what it does not know of", () => {
    const [draft] = draftsOf([
      { offerId: "roll", packs: 2, goodsMinor: 7600 },
      { offerId: "paper", packs: 1, goodsMinor: 3800 },
    ]);
    expect(draft?.lines.map((line) => [line.offerId, line.packs, line.why])).toEqual([
      ["roll", 2, "rides along"],
      ["paper", 1, "rides along; due by itself in the week from 9 Dec"],
      // No price is known, so the plan cannot reckon with it: as the supply alone would have it.
      ["tape", 1, null],
    ]);
    expect(draft?.expectedOn).toBe("2026-12-08");
  });

  it("leave what the plan puts off with no packs", () => {
    const [draft] = draftsOf([{ offerId: "roll", packs: 1, goodsMinor: 3800 }]);
    expect(draft?.lines.map((line) => [line.offerId, line.packs])).toEqual([
      ["roll", 1],
      ["tape", 1],
      ["paper", 0],
    ]);
  });
});
