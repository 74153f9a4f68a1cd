import { describe, expect, it } from "vitest";
import { planModel, planParts } from "#lib/purchasing/plan/plan-model";
import { mostOwed, unavoidable } from "#lib/purchasing/plan/stock-rows";
import { plainOffer, plainQuestion, plainSupplier, plainSupply } from "./small-question";
import { brokenByPlan } from "./whole-model";

const question = plainQuestion({
  supplies: [plainSupply("paper", [3, 3, 3], { stock: 4 }), plainSupply("saved", [0, 1, 1], { stock: 2 })],
  suppliers: [plainSupplier("north", 3)],
  offers: [plainOffer("paper", "north", { leadWeeks: 1, mostPacks: 2 })],
  substitutes: [{ fromSupplyId: "saved", toSupplyId: "paper", ratio: 1 }],
});

describe("rows of the stock", () => {
  it("know what can be owed, and what no order can prevent", () => {
    const [paper, saved] = planParts(question).supplies;
    if (paper === undefined || saved === undefined) throw new RangeError("two supplies");
    expect([0, 1, 2].map((week) => mostOwed(paper, week))).toEqual([0, 2, 5]);
    // Two packs of week 0 arrive in week 1, two more in week 2: 5 owed less 4.
    expect([0, 1, 2].map((week) => unavoidable(paper, week))).toEqual([0, 0, 1]);
    expect([0, 1, 2].map((week) => mostOwed(saved, week))).toEqual([1, 5, 9]);
  });

  it("let only what is on hand stand in", () => {
    const lent = (units: number, week: number) =>
      brokenByPlan(planModel(question), {
        lines: [],
        standIns: [{ fromSupplyId: "saved", toSupplyId: "paper", week, units }],
      }).broken;
    expect(lent(2, 0)).toEqual([]);
    expect(lent(2, 1)).toEqual(["ownfirst"]);
  });
});
