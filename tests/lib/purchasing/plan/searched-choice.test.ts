import { describe, expect, it } from "vitest";
import { costedPlan } from "#lib/purchasing/plan/costed-plan";
import { heuristicChoice } from "#lib/purchasing/plan/heuristic-choice";
import { planFaults } from "#lib/purchasing/plan/plan-faults";
import { planParts } from "#lib/purchasing/plan/plan-model";
import { searchedChoice } from "#lib/purchasing/plan/searched-choice";
import { sharedBound } from "#lib/purchasing/plan/shared-bound";
import { everyPlan } from "./every-plan";
import { smallQuestion } from "./small-question";

function turns(count: number) {
  let turn = 0;
  return { gone: () => turn++ / count, enoughMinor: Number.NEGATIVE_INFINITY };
}

describe("a searched plan", () => {
  it("is, where sound, no cheaper than every plan and no dearer than the one it began with", () => {
    let sound = 0;
    let met = 0;
    for (let seed = 1; seed <= 30; seed++) {
      const question = smallQuestion(seed);
      const { supplies, slots } = planParts(question);
      const choice = heuristicChoice(question, supplies, slots, () => false);
      const knownMinor = costedPlan(question, choice).costs.totalMinor;
      const search = { choice, knownMinor, gap: 0, isOver: () => false };
      const { proof } = sharedBound(question, supplies, search);
      const found = costedPlan(question, searchedChoice(question, supplies, slots, choice, proof, turns(60)));
      if (planFaults(question, found).length > 0) continue;
      sound++;
      const { totalMinor } = found.costs;
      expect(totalMinor, `question ${seed}`).toBeLessThanOrEqual(knownMinor + 1e-6);
      const least = everyPlan(question)?.cost ?? Number.NaN;
      // Enumerated stand-ins go in halves; the plan's may be finer.
      if (question.substitutes.length === 0) expect(totalMinor).toBeGreaterThanOrEqual(least - 1e-6);
      if (totalMinor <= least + 1e-6) met++;
    }
    expect(sound).toBeGreaterThan(20);
    expect(met).toBeGreaterThan(15);
  });
});
