import { describe, expect, it } from "vitest";
import { fillRate, fillRateFactor } from "#lib/replenishment/exact-policy/fill-rate";
import { unitNormalLoss } from "#lib/statistics/unit-normal-loss";

// Computed values in tests/reference/service.test.ts; the simulation in ../simulation/played-run.test.ts.
const shop = {
  orderUpTo: 90,
  period: { mean: 20, deviation: 8 },
  reviewPeriods: 1,
  leadTimePeriods: 3,
};

describe("the share of the use met from stock", () => {
  it("is higher than the usual reckoning says, and the same without a lead time", () => {
    for (const orderUpTo of [60, 80, 100]) {
      const { exact, usual } = fillRate({ ...shop, orderUpTo });
      expect(exact).toBeGreaterThan(usual);
    }
    const atOnce = fillRate({ ...shop, orderUpTo: 20, leadTimePeriods: 0 });
    expect(atOnce.exact).toBe(atOnce.usual);
    expect(atOnce.exact).toBeCloseTo(1 - (8 * unitNormalLoss(0)) / 20, 12);
  });

  it("comes near 1 with much stock and near 0 with none", () => {
    expect(fillRate({ ...shop, orderUpTo: 300 }).exact).toBeCloseTo(1, 10);
    expect(fillRate({ ...shop, orderUpTo: -100 }).exact).toBeCloseTo(0, 10);
    expect(fillRate({ ...shop, orderUpTo: -100, leadTimePeriods: 0 }).exact).toBeCloseTo(0, 10);
  });

  it("asks for terms in range", () => {
    expect(() => fillRate({ ...shop, reviewPeriods: 0 })).toThrow(/got 20, 8, 0, 3/);
    expect(() => fillRate({ ...shop, period: { mean: 0, deviation: 8 } })).toThrow(RangeError);
  });
});

describe("the factor for a share met from stock", () => {
  it("leaves just so much short a lot", () => {
    const factor = fillRateFactor({ lot: 100, share: 0.98, deviation: 25 });
    expect((25 * unitNormalLoss(factor)) / 100).toBeCloseTo(0.02, 12);
  });

  it("is below 0 for a large lot, and is not held at 0", () => {
    expect(fillRateFactor({ lot: 500, share: 0.95, deviation: 20 })).toBeLessThan(-1);
  });

  it("asks for terms in range", () => {
    expect(() => fillRateFactor({ lot: 100, share: 1, deviation: 25 })).toThrow(/got 100, 25, 1/);
  });
});
