import { describe, expect, it } from "vitest";
import { jointReplenishment } from "#lib/replenishment/order-quantity/joint-replenishment";
import { powerOfTwoReplenishment } from "#lib/replenishment/order-quantity/power-of-two-replenishment";

// A published value: tests/reference/order-quantity.test.ts.
const terms = {
  orderCost: 5,
  items: [
    { lineCost: 1, holdingCost: 1, yearlyUse: 2 },
    { lineCost: 40, holdingCost: 1, yearlyUse: 2 },
    { lineCost: 3, holdingCost: 2, yearlyUse: 30 },
  ],
};
const WEEK = 1 / 52;

describe("joint replenishment in powers of two", () => {
  it("is the cheapest of all rhythms, tried one by one", () => {
    const found = powerOfTwoReplenishment(terms, WEEK);
    const powers = Array.from({ length: 10 }, (_, power) => 2 ** power);
    const costs = powers.flatMap((order) =>
      powers.flatMap((a) =>
        powers.flatMap((b) =>
          powers.flatMap((c) => {
            const own = [a, b, c];
            if (own.some((periods) => periods < order)) return [];
            return [
              terms.items.reduce(
                (sum, item, index) => {
                  const years = (own[index] ?? 0) * WEEK;
                  return sum + item.lineCost / years + (item.holdingCost * item.yearlyUse * years) / 2;
                },
                terms.orderCost / (order * WEEK),
              ),
            ];
          }),
        ),
      ),
    );
    expect(found.cost).toBeCloseTo(Math.min(...costs), 10);
    expect(found.itemPeriods.every((periods) => periods >= found.orderPeriods)).toBe(true);
  });

  it("is at most 6.1 % dearer than the best strict rhythm", () => {
    expect(powerOfTwoReplenishment(terms, WEEK).cost).toBeLessThan(1.061 * jointReplenishment(terms).cost);
  });

  it("asks for a period", () => {
    expect(() => powerOfTwoReplenishment(terms, 0)).toThrow(/period above 0, got 0/);
  });
});
