import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type OrderUpToTerms,
  orderUpToCost,
  orderUpToLevels,
} from "#lib/replenishment/exact-policy/order-up-to-levels";
import { gridOf } from "#lib/statistics/grid-distribution";

// Published values: tests/reference/exact-policy.test.ts.
const terms: fc.Arbitrary<OrderUpToTerms> = fc.record({
  orderCost: fc.integer({ min: 1, max: 60 }),
  holdingCost: fc.integer({ min: 1, max: 5 }),
  shortageCost: fc.integer({ min: 1, max: 30 }),
  use: fc
    .array(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 7 })
    .map((weights) => gridOf(1, [...weights, 1])),
  leadTimePeriods: fc.integer({ min: 0, max: 3 }),
  reviewPeriods: fc.integer({ min: 1, max: 3 }),
});

describe("the exact levels", () => {
  it("are the cheapest of all pairs, tried one by one", () => {
    fc.assert(
      fc.property(terms, (given) => {
        const best = orderUpToLevels(given);
        expect(orderUpToCost(given, best)).toBeCloseTo(best.cost, 10);
        let least = Infinity;
        for (let reorderPoint = -12; reorderPoint < 40; reorderPoint += 1) {
          for (let orderUpTo = reorderPoint + 1; orderUpTo < reorderPoint + 40; orderUpTo += 1) {
            least = Math.min(least, orderUpToCost(given, { reorderPoint, orderUpTo }));
          }
        }
        expect(best.cost).toBeCloseTo(least, 9);
      }),
      { numRuns: 12, seed: 3 },
    );
  });

  it("are a fixed cycle where the use is sure: 1 a period, worked by hand", () => {
    // A lot of n is held 0 + 1 + ... + (n - 1) over n periods: 8 / n + (n - 1) / 2 is least, 3.5, at 4.
    const sure = {
      orderCost: 8,
      holdingCost: 1,
      shortageCost: 1e6,
      use: gridOf(1, [0, 1]),
      leadTimePeriods: 0,
    };
    expect(orderUpToLevels(sure)).toEqual({ reorderPoint: 0, orderUpTo: 4, cost: 3.5 });
    // Seen every second period: a lot of 2 costs 8 / 2 + 1 / 2, of 4 again 3.5, of 6 8 / 6 + 5 / 2.
    expect(orderUpToLevels({ ...sure, reviewPeriods: 2 })).toEqual({
      reorderPoint: 1,
      orderUpTo: 4,
      cost: 3.5,
    });
    expect(orderUpToLevels({ ...sure, leadTimePeriods: 3 })).toEqual({
      reorderPoint: 3,
      orderUpTo: 7,
      cost: 3.5,
    });
  });

  it("count levels in steps and costs by the unit", () => {
    const sure = {
      orderCost: 80,
      holdingCost: 1,
      shortageCost: 1e6,
      use: gridOf(10, [0, 1]),
      leadTimePeriods: 0,
    };
    expect(orderUpToLevels(sure)).toEqual({ reorderPoint: 0, orderUpTo: 4, cost: 35 });
  });

  it("ask for costs, a use and levels in order", () => {
    const given = {
      orderCost: 8,
      holdingCost: 1,
      shortageCost: 9,
      use: gridOf(1, [1, 1]),
      leadTimePeriods: 0,
    };
    expect(() => orderUpToLevels({ ...given, orderCost: 0 })).toThrow(/above 0, got 0/);
    expect(() => orderUpToLevels({ ...given, use: gridOf(1, [1]) })).toThrow(/mean use above 0/);
    expect(() => orderUpToLevels({ ...given, leadTimePeriods: 0.5 })).toThrow(/whole number from 0, got 0.5/);
    expect(() => orderUpToLevels({ ...given, reviewPeriods: 0 })).toThrow(/review periods above 0, got 0/);
    expect(() => orderUpToCost(given, { reorderPoint: 4, orderUpTo: 4 })).toThrow(/got 4 and 4/);
  });
});
