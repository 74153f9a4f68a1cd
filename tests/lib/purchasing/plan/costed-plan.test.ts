import { describe, expect, it } from "vitest";
import { costedPlan, deliveryOf } from "#lib/purchasing/plan/costed-plan";
import { planFaults } from "#lib/purchasing/plan/plan-faults";
import { plainOffer, plainQuestion, plainSupplier, plainSupply } from "./small-question";

const question = plainQuestion({
  supplies: [
    plainSupply("paper", [5, 5], { stock: 4, wanted: [1, 1], endValueMinor: 2, holdingMinor: 0.5 }),
    plainSupply("saved", [0, 0], { stock: 3, holdingMinor: 0 }),
  ],
  suppliers: [plainSupplier("north", 2, { deliveryMinor: 70, freeFromMinor: 250, handlingMinor: 9 })],
  offers: [plainOffer("paper", "north", { unitsPerPack: 3, leadWeeks: 1 })],
  substitutes: [{ fromSupplyId: "saved", toSupplyId: "paper", ratio: 1.5 }],
});
const choice = {
  lines: [{ offerId: "paper of north", week: 0, packs: 2 }],
  standIns: [{ fromSupplyId: "saved", toSupplyId: "paper", week: 0, units: 2 }],
};

describe("a costed plan", () => {
  it("follows stock, shortage and cost as worked out by hand", () => {
    const plan = costedPlan(question, choice);
    expect(plan.stock[0]).toEqual({ supplyId: "paper", after: [4, 7], end: [1, 2] });
    expect(plan.stock[1]?.end).toEqual([0, 0]);
    expect(plan.shortages).toEqual([]);
    expect(plan.costs).toEqual({
      goodsMinor: 200,
      deliveryMinor: 70,
      handlingMinor: 9,
      holdingMinor: 1.5,
      shortMinor: 0,
      endValueMinor: 4,
      totalMinor: 276.5,
    });
    expect(planFaults(question, plan)).toEqual([]);
  });

  it("charges what lacks each week, and what is owed at the end at its worth", () => {
    const plan = costedPlan(question, { lines: [], standIns: [] });
    expect(plan.shortages).toEqual([
      { supplyId: "paper", week: 0, missing: 2, owed: 1 },
      { supplyId: "paper", week: 1, missing: 7, owed: 6 },
    ]);
    expect(plan.costs).toMatchObject({ shortMinor: 900, endValueMinor: -12, totalMinor: 912 });
  });

  it("delivers for nothing from the threshold on, and refuses offers it does not know", () => {
    const [supplier] = question.suppliers;
    if (supplier === undefined) throw new RangeError("the question has a supplier");
    expect([249, 250].map((goods) => deliveryOf(supplier, goods))).toEqual([70, 0]);
    const unknown = { lines: [{ offerId: "x", week: 0, packs: 1 }], standIns: [] };
    expect(() => costedPlan(question, unknown)).toThrow(/what the question has, got offer x/);
  });
});
