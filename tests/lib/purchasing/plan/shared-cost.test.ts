import { describe, expect, it } from "vitest";
import { planParts } from "#lib/purchasing/plan/plan-model";
import { sharedBound } from "#lib/purchasing/plan/shared-bound";
import { sharedCost } from "#lib/purchasing/plan/shared-cost";
import type { SharedPrices } from "#lib/purchasing/plan/shared-prices";
import { everyPlan } from "./every-plan";
import { seeded, smallQuestion } from "./small-question";

describe("the least cost at shared prices", () => {
  it("is at no prices above the least cost of every plan", () => {
    for (const seed of [2, 3, 5, 6, 8, 9, 11, 12, 14, 15]) {
      const question = smallQuestion(seed);
      const least = everyPlan(question);
      const { supplies } = planParts(question);
      const known = { choice: { lines: [], standIns: [] }, knownMinor: 0, gap: 0, isOver: () => true };
      const { proof } = sharedBound(question, supplies, known);
      if (least === null || proof === null) continue;
      const draw = seeded(seed);
      for (let turn = 0; turn < 20; turn++) {
        const any = (like: Float64Array, most: number) => like.map(() => (draw(0, 10) * most) / 10);
        const prices: SharedPrices = {
          part: any(proof.prices.part, 300),
          free: any(proof.prices.free, 1),
          least: any(proof.prices.least, 1),
          cash: any(proof.prices.cash, 1),
          // Where room is no matter it has no price.
          litre: any(proof.prices.litre, question.limits.litres === null ? 0 : 50),
        };
        const { minor } = sharedCost(proof.parts, prices, true);
        expect(minor, `question ${seed}`).toBeLessThanOrEqual(least.cost + 1e-6);
      }
    }
  });
});
