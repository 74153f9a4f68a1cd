import { describe, expect, it } from "vitest";
import { economicOrderQuantity, lotCost } from "#lib/replenishment/order-quantity/economic-order-quantity";
import { wholePacks } from "#lib/replenishment/order-quantity/whole-packs";

describe("whole packs", () => {
  it("are the cheapest of all whole numbers", () => {
    for (let pack = 3; pack < 900; pack += 7.3) {
      const terms = { orderCost: 8, holdingCost: 0.225, yearlyUse: 1300 };
      const costs = Array.from({ length: 200 }, (_, index) => lotCost(terms, pack * (index + 1)));
      const found = wholePacks(economicOrderQuantity(terms) / pack);
      expect(found).toBe(costs.indexOf(Math.min(...costs)) + 1);
    }
  });

  it("are the fewer of two that cost the same", () => {
    expect([2, 6, 12, 20].map((square) => wholePacks(Math.sqrt(square)))).toEqual([1, 2, 3, 4]);
    expect(wholePacks(Math.sqrt(2) + 1e-9)).toBe(2);
  });

  it("are at least one", () => {
    expect(wholePacks(0)).toBe(1);
    expect(() => wholePacks(-1)).toThrow(/from 0, got -1/);
    expect(() => wholePacks(Infinity)).toThrow(RangeError);
  });
});
