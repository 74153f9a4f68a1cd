import { describe, expect, it } from "vitest";
import { orderUpToCost, orderUpToLevels } from "#lib/replenishment/exact-policy/order-up-to-levels";
import { meanEstimate } from "#lib/replenishment/simulation/estimate";
import { orderUpToPolicy } from "#lib/replenishment/simulation/order-up-to-policy";
import type { UseSource } from "#lib/replenishment/simulation/shop-use";
import { simulatedShops } from "#lib/replenishment/simulation/simulated-shops";
import { evenRandom } from "#lib/statistics/even-random";
import { poissonGrid } from "../../statistics/poisson-grid";
import { FIRST_DAY, oneSupplyShop, oneSupplyUse } from "./one-supply-shop";

/** Poisson counts of one mean a day: every day by itself. */
const poisson = (perDay: number): UseSource => ({
  kind: "drawn",
  path: { firstWeek: FIRST_DAY, perWeek: [7 * perDay] },
  spread: { perUse: 1, dispersions: [0], whole: true },
});

const levelsOf = (reorderPoint: number, orderUpTo: number) =>
  orderUpToPolicy([{ supplyId: "a", offerId: "single", packAmount: 1, reorderPoint, orderUpTo }]);

describe("a simulated shop", () => {
  // Zheng and Federgruen (1991): 6 and 40 at a mean of 10, cost 35.022; with a lead time the exact cost of this library,
  // which tests/reference holds against that paper.
  it.each([
    { mean: 10, leadTimePeriods: 0, reviewPeriods: 1 },
    { mean: 4, leadTimePeriods: 3, reviewPeriods: 1 },
    { mean: 2, leadTimePeriods: 4, reviewPeriods: 7 },
  ])(
    "costs what the exact levels cost: mean $mean, lead time $leadTimePeriods, review $reviewPeriods",
    ({ mean, leadTimePeriods, reviewPeriods }) => {
      const terms = {
        orderCost: 64,
        holdingCost: 1,
        shortageCost: 9,
        use: poissonGrid(mean),
        leadTimePeriods,
        reviewPeriods,
      };
      const best = orderUpToLevels(terms);
      const days = 1100;
      const shop = (reorderPoint: number, orderUpTo: number) =>
        oneSupplyShop([{ days: leadTimePeriods, chance: 1 }], {
          countedFrom: 100,
          reviewDays: reviewPeriods,
          suppliers: [
            {
              supplierId: "s",
              leadTimes: [{ days: leadTimePeriods, chance: 1 }],
              delivery: { charge: terms.orderCost, freeFrom: null },
              leastValue: null,
            },
          ],
          policy: levelsOf(reorderPoint, orderUpTo),
        });
      const other = { reorderPoint: best.reorderPoint + 4, orderUpTo: best.orderUpTo + 6 };
      const [atBest, atOther] = simulatedShops(
        oneSupplyUse(poisson(mean), days),
        [shop(best.reorderPoint, best.orderUpTo), shop(other.reorderPoint, other.orderUpTo)],
        { runs: 60, random: evenRandom(5) },
      ).map(({ runs }) =>
        meanEstimate(
          runs.map(
            ({ shop: { deliveryCost, meanValue, meanOwedValue } }) =>
              deliveryCost / (days - 100) +
              terms.holdingCost * meanValue +
              terms.shortageCost * meanOwedValue,
          ),
        ),
      );
      expect(Math.abs((atBest?.mean ?? 0) - best.cost)).toBeLessThan(3 * (atBest?.standardError ?? 0));
      expect(atBest?.standardError).toBeLessThan(0.01 * best.cost);
      const cost = orderUpToCost(terms, other);
      expect(Math.abs((atOther?.mean ?? 0) - cost)).toBeLessThan(3 * (atOther?.standardError ?? 0));
      expect(atOther?.mean).toBeGreaterThan(atBest?.mean ?? Infinity);
    },
  );

  it("gives the same result from the same seed, and another from another", () => {
    const played = (seed: number) =>
      simulatedShops(
        oneSupplyUse(poisson(3), 50),
        [oneSupplyShop([{ days: 2, chance: 1 }], { policy: levelsOf(8, 30) })],
        { runs: 5, random: evenRandom(seed) },
      );
    expect(played(1)).toEqual(played(1));
    expect(played(1)).not.toEqual(played(2));
  });

  it("plays settings side by side on the same draws", () => {
    const leadTimes = [
      { days: 1, chance: 0.5 },
      { days: 6, chance: 0.5 },
    ];
    const low = oneSupplyShop(leadTimes, { policy: levelsOf(8, 30) });
    const high = oneSupplyShop(leadTimes, { policy: levelsOf(20, 30) });
    const play = { runs: 8, random: evenRandom(3) };
    const [first, second, third] = simulatedShops(oneSupplyUse(poisson(3), 200), [low, high, low], play);
    expect(third).toEqual(first);
    expect(second?.runs.map(({ shop }) => shop.need)).toEqual(first?.runs.map(({ shop }) => shop.need));
    expect(second?.shop.means.unmet.mean).toBeLessThan(first?.shop.means.unmet.mean ?? 0);
    const alone = simulatedShops(oneSupplyUse(poisson(3), 200), [high], {
      runs: 8,
      random: evenRandom(3),
    });
    expect(alone[0]).toEqual(second);
  });

  it("sums up services over all runs, and knows none where no cycle ended or nothing was used", () => {
    const never = () => [];
    const [result] = simulatedShops(
      oneSupplyUse({ kind: "replayed", perDay: [0, 0, 0] }, 3),
      [oneSupplyShop([{ days: 1, chance: 1 }], { policy: never })],
      { runs: 2, random: evenRandom(1) },
    );
    expect(result?.shop.cycleService).toBeNull();
    expect(result?.shop.filledShare).toBeNull();
    const [short] = simulatedShops(
      oneSupplyUse({ kind: "replayed", perDay: [1, 1, 2] }, 3),
      [
        oneSupplyShop([{ days: 1, chance: 1 }], {
          policy: never,
          supplies: [
            {
              supplyId: "a",
              startStock: 1,
              arrivals: [{ dueDay: 2, amount: 4 }],
              unitValue: 3,
              litresPerUnit: 2,
            },
          ],
        }),
      ],
      { runs: 2, random: evenRandom(1) },
    );
    expect(short?.shop.cycleService?.mean).toBe(0);
    expect(short?.supplies.get("a")?.filledShare?.mean).toBeCloseTo(0.75, 12);
    expect(short?.shop.filledShare?.standardError).toBe(0);
  });

  it("names a setting that is out of range", () => {
    const use = oneSupplyUse({ kind: "replayed", perDay: [1] }, 1);
    const shop = oneSupplyShop([{ days: 1, chance: 1 }], { policy: () => [] });
    const play = { runs: 1, random: evenRandom(1) };
    expect(() => simulatedShops(use, [{ ...shop, reviewDays: 0 }], play)).toThrow(
      /review days above 0, got 0/,
    );
    expect(() => simulatedShops(use, [{ ...shop, firstCheck: -1 }], play)).toThrow(/first check .* got -1/);
    expect(() => simulatedShops(use, [{ ...shop, countedFrom: 1 }], play)).toThrow(/before 1, got 1/);
    expect(() => simulatedShops(use, [shop], { ...play, runs: 0 })).toThrow(/runs from 1, got 0/);
    const below = { supplyId: "a", startStock: -1, arrivals: [], unitValue: 1, litresPerUnit: 1 };
    expect(() => simulatedShops(use, [{ ...shop, supplies: [below] }], play)).toThrow(/of a, got -1/);
    const half = oneSupplyShop([{ days: 1, chance: 0.5 }], { policy: () => [] });
    expect(() => simulatedShops(use, [half], play)).toThrow(/add up to 1, got 0.5/);
  });
});
