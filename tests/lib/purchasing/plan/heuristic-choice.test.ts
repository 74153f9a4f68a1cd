import { describe, expect, it } from "vitest";
import { costedPlan } from "#lib/purchasing/plan/costed-plan";
import { heuristicChoice } from "#lib/purchasing/plan/heuristic-choice";
import { planFaults } from "#lib/purchasing/plan/plan-faults";
import { planParts } from "#lib/purchasing/plan/plan-model";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import { everyPlan } from "./every-plan";
import { plainOffer, plainQuestion, plainSupplier, plainSupply, smallQuestion } from "./small-question";

const planned = (question: PlanQuestion) => {
  const { supplies, slots } = planParts(question);
  return costedPlan(
    question,
    heuristicChoice(question, supplies, slots, () => false),
  );
};

/** A shortage that is dearer than any pack. */
const DEAR = { shortMinor: 500 };

describe("a plan without a solver", () => {
  it("breaks no rule, is never below the best of all plans, and mostly reaches it", () => {
    let reached = 0;
    for (let seed = 1; seed <= 15; seed++) {
      const question = smallQuestion(seed);
      const best = everyPlan(question)?.cost ?? Number.NaN;
      const plan = planned(question);
      expect(planFaults(question, plan)).toEqual([]);
      expect(plan.costs.totalMinor).toBeGreaterThan(best - 1e-6);
      if (plan.costs.totalMinor < best + 1e-6) reached++;
    }
    expect(reached).toBeGreaterThan(8);
  });

  it("fills an order up to free delivery where that saves", () => {
    const question = plainQuestion({
      supplies: [plainSupply("paper", [3, 3], DEAR), plainSupply("tape", [0, 4], DEAR)],
      suppliers: [plainSupplier("north", 2, { deliveryMinor: 90, freeFromMinor: 1000 })],
      offers: [plainOffer("paper", "north"), plainOffer("tape", "north")],
    });
    expect(planned(question).orders).toMatchObject([{ week: 0, goodsMinor: 1000, deliveryMinor: 0 }]);
  });

  it("uses saved material before anything is bought in its place", () => {
    const question = plainQuestion({
      supplies: [plainSupply("paper", [3, 3], DEAR), plainSupply("saved", [0, 0], { stock: 8 })],
      suppliers: [plainSupplier("north", 2)],
      offers: [plainOffer("paper", "north")],
      substitutes: [{ fromSupplyId: "saved", toSupplyId: "paper", ratio: 2 }],
    });
    const plan = planned(question);
    expect(plan.standIns.map(({ week, units }) => [week, units])).toEqual([
      [0, 3],
      [1, 1],
    ]);
    expect(plan.costs.goodsMinor).toBe(200);
  });
});
