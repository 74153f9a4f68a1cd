import { describe, expect, it } from "vitest";
import {
  normalReorderLot,
  normalReorderLotCost,
  reorderPointForLot,
} from "#lib/replenishment/exact-policy/normal-reorder-lot";

// Published values: tests/reference/exact-policy.test.ts.
const terms = {
  orderCost: 12,
  holdingCost: 0.5,
  shortageCost: 4,
  perTime: 200,
  leadTime: { mean: 30, deviation: 9 },
};

describe("the best reorder point and lot for a normal use", () => {
  it("cost less than others near them", () => {
    const { reorderPoint, lot, cost } = normalReorderLot(terms);
    expect(normalReorderLotCost(terms, { reorderPoint, lot })).toBe(cost);
    for (const point of [-3, -0.3, 0, 0.3, 3]) {
      for (const more of [-9, -0.9, 0, 0.9, 9]) {
        const other = normalReorderLotCost(terms, { reorderPoint: reorderPoint + point, lot: lot + more });
        expect(other).toBeGreaterThanOrEqual(cost * (1 - 1e-12));
      }
    }
  });

  it("has the reorder point that is best for its lot, as for any other", () => {
    const best = normalReorderLot(terms);
    expect(reorderPointForLot(terms, best.lot)).toBeCloseTo(best.reorderPoint, 8);
    const point = reorderPointForLot(terms, 60);
    const cost = normalReorderLotCost(terms, { reorderPoint: point, lot: 60 });
    for (const far of [-2, -0.2, 0.2, 2]) {
      expect(normalReorderLotCost(terms, { reorderPoint: point + far, lot: 60 })).toBeGreaterThan(cost);
    }
  });

  it("asks for terms in range", () => {
    expect(() => normalReorderLot({ ...terms, perTime: 0 })).toThrow(/got 12 and 0/);
    expect(() => normalReorderLotCost(terms, { reorderPoint: 1, lot: 0 })).toThrow(/lot above 0, got 0/);
    expect(() => reorderPointForLot(terms, -1)).toThrow(/lot above 0, got -1/);
  });
});
