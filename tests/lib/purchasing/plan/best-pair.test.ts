import { describe, expect, it } from "vitest";
import { bestPair } from "#lib/purchasing/plan/best-pair";
import { pairSpace } from "#lib/purchasing/plan/pair-space";
import { pairStandIns } from "#lib/purchasing/plan/pair-stand-ins";
import { planParts } from "#lib/purchasing/plan/plan-model";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { SpaceSlot } from "#lib/purchasing/plan/schedule-space";
import { everyPlan } from "./every-plan";
import { plainOffer, plainQuestion, plainSupplier, plainSupply, smallQuestion } from "./small-question";

const goodsOnly = (_: SpaceSlot, goods: number) => goods;

function space(question: PlanQuestion, cells: number) {
  const { supplies } = planParts(question);
  const [pair] = question.substitutes;
  const from = supplies.find(({ supply }) => supply.id === pair?.fromSupplyId);
  const to = supplies.find(({ supply }) => supply.id === pair?.toSupplyId);
  if (pair === undefined || from === undefined || to === undefined) throw new RangeError("no pair");
  return pairSpace(from, to, pair.ratio, question.weeks, cells);
}

const least = (question: PlanQuestion, cells: number) =>
  bestPair(space(question, cells), { slotMinor: goodsOnly, litreMinor: new Float64Array(question.weeks) });

describe("orders of a pair", () => {
  it("cost no more than the best of every plan, with few cells and with many", () => {
    for (let seed = 3; seed <= 90; seed += 3) {
      const whole = smallQuestion(seed);
      const ids = whole.substitutes.flatMap((pair) => [pair.fromSupplyId, pair.toSupplyId]);
      const question: PlanQuestion = {
        ...whole,
        supplies: whole.supplies.filter(({ id }) => ids.includes(id)),
        offers: whole.offers.filter(({ supplyId }) => ids.includes(supplyId)),
        suppliers: whole.suppliers.map((each) => ({
          ...each,
          deliveryMinor: 0,
          handlingMinor: 0,
          freeFromMinor: null,
          leastOrderMinor: null,
        })),
        limits: { cash: [], litres: null },
      };
      const best = everyPlan(question)?.cost ?? Number.NaN;
      for (const cells of [3, 16]) {
        expect(least(question, cells).minor, `question ${seed}`).toBeLessThanOrEqual(best + 1e-6);
      }
    }
  });

  it("leave saved material unbought where it does the work", () => {
    // 2 a week; 4 saved do the work of all 4, worth nothing else and costing nothing to hold.
    const question = plainQuestion({
      supplies: [
        plainSupply("paper", [2, 2], { holdingMinor: 0 }),
        plainSupply("saved", [0, 0], { stock: 4, holdingMinor: 0 }),
      ],
      suppliers: [plainSupplier("north", 2)],
      offers: [plainOffer("paper", "north")],
      substitutes: [{ fromSupplyId: "saved", toSupplyId: "paper", ratio: 1 }],
    });
    const found = least(question, 16);
    expect([found.minor, found.packs.size]).toEqual([0, 0]);
    const standIns = pairStandIns(space(question, 16), found.packs);
    expect(standIns.map(({ week, units }) => [week, Math.round(units * 1e6) / 1e6])).toEqual([
      [0, 2],
      [1, 2],
    ]);
  });
});
