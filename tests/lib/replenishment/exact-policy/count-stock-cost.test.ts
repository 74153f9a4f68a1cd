import { describe, expect, it } from "vitest";
import { checkEndCosts, countStockCost } from "#lib/replenishment/exact-policy/count-stock-cost";
import { gridOf } from "#lib/statistics/grid-distribution";

const costs = { holdingCost: 2, shortageCost: 7 };

describe("the cost of a stock at the end of a period", () => {
  it("is what each use costs, by its chance", () => {
    const chances = [0.1, 0.2, 0, 0.4, 0.3];
    const cost = countStockCost(costs, gridOf(1, chances));
    for (let stock = -3; stock < 9; stock += 1) {
      const byHand = chances.reduce(
        (sum, chance, used) => sum + chance * (2 * Math.max(0, stock - used) + 7 * Math.max(0, used - stock)),
        0,
      );
      expect(cost(stock)).toBeCloseTo(byHand, 12);
    }
  });

  it("counts a stock in steps and costs by the unit", () => {
    // 50 or 100 used with equal chance: from 1 step, 50 are short half the time; from 2, 50 are left.
    const cost = countStockCost(costs, gridOf(50, [0, 1, 1]));
    expect([0, 1, 2, 3].map(cost)).toEqual([7 * 75, 7 * 25, 2 * 25, 2 * 75]);
  });

  it("asks for costs above 0", () => {
    expect(() => checkEndCosts("name", { holdingCost: 0, shortageCost: 1 })).toThrow(
      /name requires .* got 0 and 1/,
    );
    expect(() => countStockCost({ holdingCost: 1, shortageCost: 0 }, gridOf(1, [1]))).toThrow(RangeError);
  });
});
