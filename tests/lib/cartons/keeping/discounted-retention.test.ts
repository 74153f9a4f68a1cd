import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { discountedRetention } from "#lib/cartons/keeping/discounted-retention";

const terms = { unitCost: 4, salvage: 1, yearlyHolding: 0.5, discountRate: 0.1 };

describe("discountedRetention", () => {
  it("is where salvage now and holding until then cost as much as buying again then, at today's value", () => {
    const positive = fc.double({ min: 0.01, max: 100, noNaN: true });
    fc.assert(
      fc.property(positive, positive, positive, (unitCost, yearlyHolding, salvage) => {
        fc.pre(salvage < unitCost);
        const years = discountedRetention({ unitCost, salvage, yearlyHolding, discountRate: 0.1 });
        const later = Math.exp(-0.1 * years);
        const kept = salvage + (yearlyHolding * (1 - later)) / 0.1;
        expect(kept).toBeCloseTo(unitCost * later, 6);
      }),
    );
  });

  it("keeps nothing that brings its price, and for ever what costs more to let go", () => {
    expect(discountedRetention({ ...terms, salvage: 4 })).toBe(0);
    expect(discountedRetention({ ...terms, salvage: -5 })).toBe(Number.POSITIVE_INFINITY);
  });

  it.each([{ unitCost: -1 }, { yearlyHolding: -1 }, { discountRate: 0 }, { salvage: Number.NaN }])(
    "refuses %o",
    (change) => {
      expect(() => discountedRetention({ ...terms, ...change })).toThrow(RangeError);
    },
  );
});
