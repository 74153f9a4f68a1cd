import { describe, expect, it } from "vitest";
import { orderCosts, WEEKS_A_YEAR, yearlyTotal } from "#lib/replenishment/order-quantity/order-costs";
import { orderTerms } from "./order-terms";

describe("costs of an order size", () => {
  it("are worked by hand", () => {
    // 3 packs last 12 weeks: 52.18 / 12 orders a year.
    const costs = orderCosts(orderTerms({ orderCost: 150 }), 3);
    const orders = 365.25 / 84;
    expect(costs).toMatchObject({ goods: 6000, delivery: 600, weeks: 12 });
    expect(costs.yearly.goods).toBeCloseTo(6000 * orders, 9);
    expect(costs.yearly.delivery).toBeCloseTo(600 * orders, 9);
    expect(costs.yearly.ordering).toBeCloseTo(150 * orders, 9);
    expect(costs.yearly.holding).toBeCloseTo(0.25 * 3000, 9);
  });

  it("add up to their total, with and without free delivery", () => {
    const question = orderTerms({ orderCost: 150, delivery: { charge: 600, freeFrom: 8000 } });
    for (let packs = 1; packs < 10; packs += 1) {
      const { yearly, delivery } = orderCosts(question, packs);
      const { total, ...parts } = yearly;
      expect(Object.values(parts).reduce((sum, part) => sum + part, 0)).toBeCloseTo(total, 8);
      expect(yearlyTotal(question, packs)).toBe(total);
      expect(delivery).toBe(packs < 4 ? 600 : 0);
    }
  });

  it("are of a year of 365.25 days", () => {
    expect(WEEKS_A_YEAR).toBeCloseTo(52.178571, 6);
  });
});
