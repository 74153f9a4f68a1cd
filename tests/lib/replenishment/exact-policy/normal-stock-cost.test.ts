import { describe, expect, it } from "vitest";
import { normalStockCost, normalStockCostArea } from "#lib/replenishment/exact-policy/normal-stock-cost";
import { normalDensity } from "#lib/statistics/normal-density";

const costs = { holdingCost: 2, shortageCost: 7 };
const use = { mean: 30, deviation: 6 };

/** Simpson's rule. */
function integral(from: number, to: number, of: (at: number) => number): number {
  const parts = 2000;
  const width = (to - from) / parts;
  let sum = of(from) + of(to);
  for (let part = 1; part < parts; part += 1) sum += (part % 2 === 1 ? 4 : 2) * of(from + part * width);
  return (sum * width) / 3;
}

describe("the cost of a stock against a normal use", () => {
  it("is what each use costs, by its density", () => {
    for (const stock of [10, 30, 35, 50]) {
      const density = (used: number) => normalDensity((used - use.mean) / use.deviation) / use.deviation;
      const left = integral(-24, stock, (used) => (stock - used) * density(used));
      const short = integral(stock, 84, (used) => (used - stock) * density(used));
      expect(normalStockCost(costs, use)(stock)).toBeCloseTo(2 * left + 7 * short, 8);
    }
  });

  it("adds up over a span of stocks", () => {
    for (const [from, to] of [
      [20, 45],
      [-5, 10],
      [35, 36],
    ] as const) {
      const byParts = integral(from, to, normalStockCost(costs, use));
      expect(normalStockCostArea(costs, use, { from, to })).toBeCloseTo(byParts, 7);
    }
  });

  it("asks for a deviation", () => {
    const none = { mean: 1, deviation: 0 };
    expect(() => normalStockCost(costs, none)).toThrow(/deviation above 0, got 0/);
    expect(() => normalStockCostArea(costs, none, { from: 0, to: 1 })).toThrow(/normalStockCostArea/);
  });
});
