import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { economicOrderQuantity } from "#lib/replenishment/order-quantity/economic-order-quantity";
import { priceBreakLot } from "#lib/replenishment/order-quantity/price-break-lot";
import { goodsCost, type PriceSteps } from "#lib/replenishment/order-quantity/price-steps";

// Published values: tests/reference/order-quantity.test.ts.
const steps = [
  { from: 0, price: 10 },
  { from: 30, price: 9 },
  { from: 100, price: 7 },
];

describe("the lot with price breaks", () => {
  it.each(["all-units", "incremental"] as const)("is cheaper than any lot of a fine grid: %s", (pricing) => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 1, max: 500 }),
        (orderCost, yearlyUse) => {
          const prices: PriceSteps = { steps, pricing };
          const found = priceBreakLot({ orderCost, holdingShare: 0.25, yearlyUse, prices });
          const cost = (lot: number) => {
            const goods = goodsCost(prices, lot);
            return ((goods + orderCost) * yearlyUse) / lot + 0.125 * goods;
          };
          expect(found.cost).toBeCloseTo(cost(found.lot), 8);
          const tried = Array.from({ length: 800 }, (_, index) => cost((index + 1) / 2));
          expect(Math.min(...tried)).toBeGreaterThanOrEqual(found.cost * (1 - 1e-12));
        },
      ),
      { numRuns: 40 },
    );
  });

  it("is the plain lot where there is one price", () => {
    const found = priceBreakLot({
      orderCost: 8,
      holdingShare: 0.3,
      yearlyUse: 1300,
      prices: { steps: [{ from: 0, price: 0.75 }], pricing: "all-units" },
    });
    expect(found.lot).toBe(economicOrderQuantity({ orderCost: 8, holdingCost: 0.3 * 0.75, yearlyUse: 1300 }));
    expect(found.step).toBe(0);
  });

  it("asks for a use and an order cost", () => {
    const prices: PriceSteps = { steps: [{ from: 0, price: 1 }], pricing: "all-units" };
    expect(() => priceBreakLot({ orderCost: 1, holdingShare: 1, yearlyUse: 0, prices })).toThrow(
      /use above 0/,
    );
    expect(() => priceBreakLot({ orderCost: 0, holdingShare: 1, yearlyUse: 1, prices })).toThrow(
      /order cost above 0/,
    );
  });
});
