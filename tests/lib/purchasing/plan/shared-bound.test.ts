import { describe, expect, it } from "vitest";
import { costedPlan } from "#lib/purchasing/plan/costed-plan";
import { heuristicChoice } from "#lib/purchasing/plan/heuristic-choice";
import { planParts } from "#lib/purchasing/plan/plan-model";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import { sharedBound } from "#lib/purchasing/plan/shared-bound";
import { everyPlan } from "./every-plan";
import { plainOffer, plainQuestion, plainSupplier, plainSupply, smallQuestion } from "./small-question";

const endless = () => false;

function boundOf(question: PlanQuestion): number {
  const { supplies, slots } = planParts(question);
  const choice = heuristicChoice(question, supplies, slots, endless);
  const knownMinor = costedPlan(question, choice).costs.totalMinor;
  return sharedBound(question, supplies, { choice, knownMinor, gap: 0, isOver: endless }).minor;
}

describe("the bound by shared prices", () => {
  it("is never above the least cost of every plan", () => {
    let compared = 0;
    for (let seed = 1; seed <= 200; seed++) {
      const question = smallQuestion(seed);
      const least = everyPlan(question);
      if (least === null) continue;
      compared++;
      expect(boundOf(question), `question ${seed}`).toBeLessThanOrEqual(least.cost + 1e-3);
    }
    expect(compared).toBeGreaterThan(150);
  });

  it("leaves no plan out that fills up order after order beyond all need", () => {
    // Tape must be ordered week by week; 4 packs of paper that is worth 95 of its 100 at the end save 400 each time.
    const question = plainQuestion({
      supplies: [
        plainSupply("paper", [1, 1, 1], { shortMinor: 900, endValueMinor: 95, holdingMinor: 0 }),
        plainSupply("tape", [1, 1, 1], { shortMinor: 900, most: [1, 1, 1] }),
      ],
      suppliers: [plainSupplier("north", 3, { deliveryMinor: 400, freeFromMinor: 500 })],
      offers: [plainOffer("paper", "north", { mostPacks: 4 }), plainOffer("tape", "north", { mostPacks: 1 })],
    });
    // 15 packs at 100, 9 of paper left at 95.
    const least = everyPlan(question)?.cost;
    expect(least).toBe(1_500 - 855);
    expect(boundOf(question)).toBeLessThanOrEqual(645);
    expect(boundOf(question)).toBeGreaterThan(500);
  });

  it("is the least cost where two supplies share one order", () => {
    // Each alone costs 100 of goods; together they pay 60 for the one order, not twice.
    const question = plainQuestion({
      supplies: [plainSupply("paper", [1]), plainSupply("tape", [1])].map((each) => ({
        ...each,
        shortMinor: 1_000,
      })),
      suppliers: [plainSupplier("north", 1, { deliveryMinor: 50, handlingMinor: 10 })],
      offers: [plainOffer("paper", "north"), plainOffer("tape", "north")],
    });
    expect(
      everyPlan({ ...question, offers: question.offers.map((each) => ({ ...each, mostPacks: 2 })) })?.cost,
    ).toBe(260);
    expect(boundOf(question)).toBeCloseTo(260, 1);
  });

  it("says nothing where a supply is in two pairs", () => {
    const ids = ["paper", "saved", "spare"];
    const question = plainQuestion({
      supplies: ids.map((id) => plainSupply(id, [1])),
      suppliers: [plainSupplier("north", 1)],
      offers: [plainOffer("paper", "north")],
      substitutes: [
        { fromSupplyId: "saved", toSupplyId: "paper", ratio: 1 },
        { fromSupplyId: "spare", toSupplyId: "paper", ratio: 1 },
      ],
    });
    expect(boundOf(question)).toBe(Number.NEGATIVE_INFINITY);
  });
});
