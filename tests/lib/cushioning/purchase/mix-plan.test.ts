import fc from "fast-check";
import { afterAll, describe, expect, it } from "vitest";
import { isBetterMix } from "#lib/cushioning/purchase/is-better-mix";
import { mixPlans } from "#lib/cushioning/purchase/mix-plan";
import type { MixQuestion } from "#lib/cushioning/purchase/mix-question";
import { endSolver } from "../../../../app/solver/solve-in-worker";
import { exactMeans, plainMix, plainMixOffer, plainMixSupply, plainWay, smallMix } from "./small-mix";

afterAll(endSolver);

const mixed = async (question: MixQuestion) => (await mixPlans(question, exactMeans)).mixed;
const seed = fc.integer({ min: 1, max: 100_000 });
const runs = { numRuns: 40 };

/** Without thresholds, room and cash, and with packs enough: what is dearer, or more, then tells by itself. */
function open(from: number): MixQuestion {
  const question = smallMix(from, 3);
  return {
    ...question,
    suppliers: question.suppliers.map((supplier) => ({
      ...supplier,
      freeFromMinor: null,
      leastOrderMinor: null,
    })),
    offers: question.offers.map((offer) => ({ ...offer, mostPacks: null })),
    // Below every price that is drawn for a unit, so that no worth is capped.
    supplies: question.supplies.map((supply) => ({ ...supply, leftMinor: supply.leftMinor / 10 })),
    limits: { cashMinor: null, litres: null },
  };
}

describe("mixed plans", () => {
  it("are never worse than all paper or all bubble, which are no better than what they are costed at", async () => {
    await fc.assert(
      fc.asyncProperty(seed, fc.constantFrom(0, 60), async (from, seconds) => {
        const plans = await mixPlans(smallMix(from, 3), { ...exactMeans, seconds });
        expect(plans.byStyle.map(({ style }) => style)).toEqual(["paper", "bubble"]);
        for (const { plan } of plans.byStyle) expect(isBetterMix(plan, plans.mixed)).toBe(false);
      }),
      runs,
    );
  });

  it("are never dearer with more on hand, where room is not short", async () => {
    await fc.assert(
      fc.asyncProperty(seed, fc.integer({ min: 1, max: 8 }), async (from, more) => {
        const question = open(from);
        const supplies = question.supplies.map((supply, index) =>
          index === 0 ? { ...supply, onHand: supply.onHand + more } : supply,
        );
        const before = await mixed(question);
        const after = await mixed({ ...question, supplies });
        expect(after.costs.totalMinor).toBeLessThanOrEqual(before.costs.totalMinor + 1e-4);
      }),
      runs,
    );
  });

  it("are never cheaper with a dearer offer, where no threshold is reached by it", async () => {
    await fc.assert(
      fc.asyncProperty(seed, fc.integer({ min: 1, max: 200 }), async (from, more) => {
        const question = open(from);
        const offers = question.offers.map((offer, index) => ({
          ...offer,
          steps: (offer.steps ?? []).map((step) =>
            index === 0 ? { ...step, priceMinor: step.priceMinor + more } : step,
          ),
        }));
        const before = await mixed(question);
        const after = await mixed({ ...question, offers });
        expect(after.costs.totalMinor).toBeGreaterThanOrEqual(before.costs.totalMinor - 1e-4);
      }),
      runs,
    );
  });

  it("name types without a style, offers left out and worths capped", async () => {
    const question = plainMix({
      supplies: [plainMixSupply("paper", { leftMinor: 900 }), plainMixSupply("bubble")],
      offers: [plainMixOffer("paper"), plainMixOffer("bubble", { steps: null })],
      types: [{ id: "cup", parcels: 2, ways: [plainWay("paper", "paper", 3, 500)] }],
    });
    const plans = await mixPlans(question, exactMeans);
    expect(plans.byStyle.map(({ keptTypeIds }) => keptTypeIds)).toEqual([[], ["cup"]]);
    expect(plans.leftOut).toEqual([{ offerId: "bubble of north", why: "no-price" }]);
    expect(plans.capped.map(({ supplyId }) => supplyId)).toEqual(["paper"]);
    // 6 sheets at 100 and two parcels at 500; nothing is bought for what it would be worth.
    expect(plans.mixed.costs.totalMinor).toBeCloseTo(1600, 4);
  });
});
