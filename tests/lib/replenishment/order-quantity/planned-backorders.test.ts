import { describe, expect, it } from "vitest";
import { economicOrderQuantity, lotCost } from "#lib/replenishment/order-quantity/economic-order-quantity";
import { plannedBackorders } from "#lib/replenishment/order-quantity/planned-backorders";

const terms = { orderCost: 8, holdingCost: 0.225, yearlyUse: 1300 };

describe("planned backorders", () => {
  it("cost less than any other lot and share", () => {
    const found = plannedBackorders(terms, 5);
    // Stock is (lot - backlog) at most and sinks evenly: worked out by hand.
    const cost = (lot: number, share: number) =>
      (terms.orderCost * terms.yearlyUse) / lot +
      (terms.holdingCost * lot * (1 - share) ** 2) / 2 +
      (5 * lot * share ** 2) / 2;
    expect(cost(found.lot, found.shortShare)).toBeCloseTo(found.cost, 10);
    for (const lot of [0.9, 0.99, 1.01, 1.1]) {
      for (const share of [0.9, 0.99, 1.01, 1.1]) {
        expect(cost(found.lot * lot, found.shortShare * share)).toBeGreaterThan(found.cost);
      }
    }
  });

  it("come to the plain lot where waiting costs very much", () => {
    const lot = economicOrderQuantity(terms);
    const found = plannedBackorders(terms, 1e12);
    expect(found.lot).toBeCloseTo(lot, 6);
    expect(found.cost).toBeCloseTo(lotCost(terms, lot), 6);
  });

  it("ask for a cost of waiting", () => {
    expect(() => plannedBackorders(terms, 0)).toThrow(/backorder cost above 0, got 0/);
  });
});
