import { describe, expect, it } from "vitest";
import { countReorderLot, countReorderLotCost } from "#lib/replenishment/exact-policy/count-reorder-lot";
import { countStockCost } from "#lib/replenishment/exact-policy/count-stock-cost";
import { gridOf } from "#lib/statistics/grid-distribution";

// A published value: tests/reference/exact-policy.test.ts.
describe("the best reorder point and lot in whole units", () => {
  const leadTime = gridOf(1, [1, 2, 4, 6, 4, 3, 2, 1]);

  it.each([
    [3, 2, 9],
    [40, 1, 2],
    [0.5, 5, 60],
  ])(
    "are the cheapest of all, tried one by one: order %s, holding %s, shortage %s",
    (orderCost, holdingCost, shortageCost) => {
      const costs = { orderCost, holdingCost, shortageCost };
      const use = { leadTime, perTime: 1.7 };
      const best = countReorderLot(costs, use);
      const endCost = countStockCost(costs, leadTime);
      let least = Infinity;
      for (let reorderPoint = -20; reorderPoint < 20; reorderPoint += 1) {
        let sum = orderCost * 1.7;
        for (let lot = 1; lot < 60; lot += 1) {
          sum += endCost(reorderPoint + lot);
          least = Math.min(least, sum / lot);
        }
      }
      expect(best.cost).toBeCloseTo(least, 10);
      expect(countReorderLotCost(costs, use, best)).toBeCloseTo(best.cost, 10);
    },
  );

  it("costs the order and the stocks that the lot goes through, worked by hand", () => {
    // Nothing is used over the lead time: stocks of 2 and 3 at 4 each, and half an order of 10 each unit of time.
    const costs = { orderCost: 10, holdingCost: 4, shortageCost: 1 };
    const use = { leadTime: gridOf(1, [1]), perTime: 1 };
    expect(countReorderLotCost(costs, use, { reorderPoint: 1, lot: 2 })).toBe((10 + 8 + 12) / 2);
  });

  it("asks for an order cost, a use and whole levels", () => {
    const costs = { orderCost: 1, holdingCost: 1, shortageCost: 1 };
    const use = { leadTime, perTime: 1 };
    expect(() => countReorderLot({ ...costs, orderCost: 0 }, use)).toThrow(/got 0 and 1/);
    expect(() => countReorderLot(costs, { leadTime, perTime: 0 })).toThrow(/got 1 and 0/);
    expect(() => countReorderLotCost(costs, use, { reorderPoint: 1, lot: 0 })).toThrow(/got 1 and 0/);
    expect(() => countReorderLotCost(costs, use, { reorderPoint: 0.5, lot: 1 })).toThrow(/got 0.5 and 1/);
  });
});
