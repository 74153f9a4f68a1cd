import { describe, expect, it } from "vitest";
import { shortUnitReorderLot } from "#lib/replenishment/exact-policy/short-unit-reorder-lot";
import { economicOrderQuantity } from "#lib/replenishment/order-quantity/economic-order-quantity";
import { unitNormalLoss } from "#lib/statistics/unit-normal-loss";

// Published values: tests/reference/exact-policy.test.ts.
const terms = { orderCost: 50, holdingCost: 2, yearlyUse: 200 };
const leadTime = { mean: 100, deviation: 25 };

describe("reorder point and lot where each unit short costs a sum", () => {
  it("cost less than others near them, orders, stock and shortages together", () => {
    const cost = (point: number, size: number) => {
      const short = 25 * unitNormalLoss((point - 100) / 25);
      return ((50 + 25 * short) * 200) / size + 2 * (size / 2 + point - 100);
    };
    const { reorderPoint, lot } = shortUnitReorderLot(terms, 25, leadTime);
    for (const far of [-4, -1, 1, 4]) {
      expect(cost(reorderPoint + far, lot)).toBeGreaterThan(cost(reorderPoint, lot));
      expect(cost(reorderPoint, lot + far)).toBeGreaterThan(cost(reorderPoint, lot));
    }
  });

  it("has a larger lot than without shortages", () => {
    expect(shortUnitReorderLot(terms, 25, leadTime).lot).toBeGreaterThan(economicOrderQuantity(terms));
  });

  it("asks for a cost that is worth holding stock for", () => {
    expect(() => shortUnitReorderLot(terms, 0.1, leadTime)).toThrow(/worth holding stock for, got 0.1/);
    expect(() => shortUnitReorderLot(terms, 0, leadTime)).toThrow(/short cost above 0, got 0/);
  });
});
