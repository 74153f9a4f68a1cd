import { describe, expect, it } from "vitest";
import { costedPlan } from "#lib/purchasing/plan/costed-plan";
import type { PlanChoice } from "#lib/purchasing/plan/plan-choice";
import { planFaults } from "#lib/purchasing/plan/plan-faults";
import { planModel, planParts } from "#lib/purchasing/plan/plan-model";
import { seeded, smallQuestion } from "./small-question";
import { brokenByPlan } from "./whole-model";

/** A plan at random: some packs in some slots. */
function anyChoice(seed: number): PlanChoice {
  const draw = seeded(seed * 31 + 7);
  const { slots } = planParts(smallQuestion(seed));
  const lines = slots
    .filter(() => draw(0, 3) === 0)
    .map(({ offer, week, most }) => ({ offerId: offer.id, week, packs: draw(1, Math.max(1, most)) }));
  return { lines, standIns: [] };
}

describe("the model of a purchase plan", () => {
  it("is met by exactly the plans that break no rule, at their own cost", () => {
    let sound = 0;
    let unsound = 0;
    for (let seed = 1; seed <= 400; seed++) {
      const question = smallQuestion(seed);
      const choice = anyChoice(seed);
      const plan = costedPlan(question, choice);
      const faults = planFaults(question, plan);
      const { broken, cost } = brokenByPlan(planModel(question), choice);
      expect({ seed, isSound: broken.length === 0 }).toEqual({ seed, isSound: faults.length === 0 });
      if (faults.length === 0) expect(cost).toBeCloseTo(plan.costs.totalMinor, 6);
      if (faults.length === 0) sound++;
      else unsound++;
    }
    expect(sound).toBeGreaterThan(50);
    expect(unsound).toBeGreaterThan(50);
  });

  it("turns the cost into a row when the room is what counts", () => {
    const question = smallQuestion(4);
    const { model } = planModel(question, { kind: "room", mostMinor: 123 });
    expect(model.columns.filter(({ cost }) => cost !== 0).map(({ name }) => name)).toEqual(["w_peak0"]);
    expect(model.rows.at(-1)).toMatchObject({ name: "mostcost", upper: 123 });
  });
});
