import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { economicOrderQuantity, lotCost } from "#lib/replenishment/order-quantity/economic-order-quantity";

// Published values: tests/reference/order-quantity.test.ts.
const cost = fc.double({ min: 0.01, max: 1000, noNaN: true });
const terms = fc.record({ orderCost: cost, holdingCost: cost, yearlyUse: cost });

describe("the economic order quantity", () => {
  it("costs less than any other lot", () => {
    fc.assert(
      fc.property(terms, fc.double({ min: 0.01, max: 100, noNaN: true }), (given, ratio) => {
        const best = economicOrderQuantity(given);
        expect(lotCost(given, best)).toBeLessThanOrEqual(lotCost(given, ratio * best) * (1 + 1e-12));
      }),
    );
  });

  it("spends as much on ordering as on holding", () => {
    const given = { orderCost: 8, holdingCost: 0.225, yearlyUse: 1300 };
    const best = economicOrderQuantity(given);
    expect(lotCost({ ...given, holdingCost: 1e-300 }, best)).toBeCloseTo(lotCost(given, best) / 2, 10);
  });

  it("is nothing where nothing is used or orders cost nothing", () => {
    expect(economicOrderQuantity({ orderCost: 8, holdingCost: 1, yearlyUse: 0 })).toBe(0);
    expect(economicOrderQuantity({ orderCost: 0, holdingCost: 1, yearlyUse: 5 })).toBe(0);
  });

  it("asks for costs in range", () => {
    const given = { orderCost: 8, holdingCost: 1, yearlyUse: 5 };
    expect(() => economicOrderQuantity({ ...given, holdingCost: 0 })).toThrow(/holding cost above 0/);
    expect(() => economicOrderQuantity({ ...given, orderCost: -1 })).toThrow(/from 0, got 1, -1, 5/);
    expect(() => economicOrderQuantity({ ...given, yearlyUse: Number.NaN })).toThrow(RangeError);
    expect(() => lotCost(given, 0)).toThrow(/lot above 0, got 0/);
  });
});
