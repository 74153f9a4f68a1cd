import { describe, expect, it } from "vitest";
import { countStockCost } from "#lib/replenishment/exact-policy/count-stock-cost";
import { countNewsvendor, normalNewsvendor } from "#lib/replenishment/exact-policy/newsvendor";
import { normalStockCost } from "#lib/replenishment/exact-policy/normal-stock-cost";
import { gridOf } from "#lib/statistics/grid-distribution";

// Published values: tests/reference/exact-policy.test.ts.
const costs = { holdingCost: 1, shortageCost: 4 };

describe("the best stock for one period", () => {
  it("costs less than more or less of it, for a normal use", () => {
    const use = { mean: 50, deviation: 8 };
    const { level, cost } = normalNewsvendor(costs, use);
    expect(normalStockCost(costs, use)(level)).toBe(cost);
    for (const far of [-5, -0.1, 0.1, 5])
      expect(normalStockCost(costs, use)(level + far)).toBeGreaterThan(cost);
  });

  it("costs least of all counts, in the unit of the use", () => {
    const use = gridOf(10, [1, 3, 5, 4, 2]);
    const { level, cost } = countNewsvendor(costs, use);
    const tried = Array.from({ length: 8 }, (_, steps) => countStockCost(costs, use)(steps));
    expect(cost).toBe(Math.min(...tried));
    expect(level).toBe(10 * tried.indexOf(cost));
  });

  it("is the middle where both cost the same", () => {
    expect(normalNewsvendor({ holdingCost: 3, shortageCost: 3 }, { mean: 20, deviation: 5 }).level).toBe(20);
  });

  it("asks for costs", () => {
    expect(() => normalNewsvendor({ holdingCost: 0, shortageCost: 1 }, { mean: 1, deviation: 1 })).toThrow(
      RangeError,
    );
    expect(() => countNewsvendor({ holdingCost: 1, shortageCost: -1 }, gridOf(1, [1]))).toThrow(RangeError);
  });
});
