import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  bestMultiple,
  type JointTerms,
  jointPlan,
  jointReplenishment,
  ruleOfThumbReplenishment,
} from "#lib/replenishment/order-quantity/joint-replenishment";

// Published values: tests/reference/order-quantity.test.ts.
const item = fc.record({
  lineCost: fc.double({ min: 0, max: 60, noNaN: true }),
  holdingCost: fc.double({ min: 0.2, max: 3, noNaN: true }),
  yearlyUse: fc.double({ min: 1, max: 300, noNaN: true }),
});
const terms = fc.record({
  orderCost: fc.double({ min: 4, max: 40, noNaN: true }),
  items: fc.array(item, { minLength: 1, maxLength: 3 }),
});

describe("joint replenishment", () => {
  it("is as cheap as the best of all multiples, tried one by one", () => {
    fc.assert(
      fc.property(terms, (given) => {
        const best = jointReplenishment(given);
        const tried = everyMultiple(given.items.length, 12).map(
          (multiples) => jointPlan(given, multiples).cost,
        );
        expect(best.cost).toBeLessThanOrEqual(Math.min(...tried) * (1 + 1e-12));
        expect(best.cost).toBeLessThanOrEqual(ruleOfThumbReplenishment(given).cost * (1 + 1e-12));
        expect(jointPlan(given, best.multiples)).toEqual(best);
        if (Math.max(...best.multiples) <= 12) expect(Math.min(...tried)).toBeCloseTo(best.cost, 8);
      }),
      { numRuns: 60 },
    );
  });

  it("has each item at the best multiple for its cycle", () => {
    fc.assert(
      fc.property(terms, (given) => {
        const { cycle, multiples } = jointReplenishment(given);
        const cost = (each: JointTerms["items"][number], multiple: number) =>
          each.lineCost / (multiple * cycle) + (each.holdingCost * each.yearlyUse * multiple * cycle) / 2;
        given.items.forEach((each, index) => {
          const found = bestMultiple(each, cycle);
          expect(cost(each, multiples[index] ?? 0)).toBeCloseTo(cost(each, found), 8);
        });
      }),
      { numRuns: 60 },
    );
  });

  it("costs what a cycle and its multiples cost, worked by hand", () => {
    // 12 an order, and 6 for each second line: 15 a cycle; 2 x 3 x 1 + 1 x 12 x 2 = 30 to hold: T = 1, cost 30.
    const given = {
      orderCost: 10,
      items: [
        { lineCost: 2, holdingCost: 2, yearlyUse: 3 },
        { lineCost: 6, holdingCost: 1, yearlyUse: 12 },
      ],
    };
    expect(jointPlan(given, [1, 2])).toEqual({ multiples: [1, 2], cycle: 1, cost: 30 });
  });

  it("asks for items and costs in range", () => {
    const one = { lineCost: 1, holdingCost: 1, yearlyUse: 1 };
    expect(() => jointReplenishment({ orderCost: 1, items: [] })).toThrow(/an item, got none/);
    expect(() => jointReplenishment({ orderCost: 0, items: [one] })).toThrow(/order cost above 0, got 0/);
    expect(() => ruleOfThumbReplenishment({ orderCost: 1, items: [{ ...one, yearlyUse: 0 }] })).toThrow(
      /got 1, 1, 0/,
    );
    expect(() => bestMultiple(one, 0)).toThrow(/cycle above 0, got 0/);
  });
});

function everyMultiple(items: number, most: number): number[][] {
  if (items === 0) return [[]];
  return everyMultiple(items - 1, most).flatMap((rest) =>
    Array.from({ length: most }, (_, index) => [...rest, index + 1]),
  );
}
