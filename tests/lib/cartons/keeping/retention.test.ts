import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type RetentionTerms, retention } from "#lib/cartons/keeping/retention";
import { economicOrderQuantity } from "#lib/replenishment/order-quantity/economic-order-quantity";

const terms: RetentionTerms = {
  yearlyUse: 600,
  unitCost: 4,
  salvage: 1,
  holdingRate: 0.24,
  orderCost: 15,
  lot: 200,
};
const money = fc.double({ min: 0.01, max: 1000, noNaN: true });
const anyTerms = fc.record({
  yearlyUse: fc.double({ min: 0.1, max: 10_000, noNaN: true }),
  unitCost: money,
  salvage: fc.double({ min: -100, max: 1000, noNaN: true }),
  holdingRate: fc.double({ min: 0.01, max: 1, noNaN: true }),
  orderCost: money,
  lot: fc.double({ min: 1, max: 1000, noNaN: true }),
});

describe("retention", () => {
  it("keeps more the more is used, the less it brings and the less it costs to hold", () => {
    fc.assert(
      fc.property(anyTerms, fc.double({ min: 1, max: 10, noNaN: true }), (given, times) => {
        const { keep } = retention(given);
        const allowance = 1e-9 * Math.max(1, keep);
        const used = retention({ ...given, yearlyUse: given.yearlyUse * times }).keep;
        // Where a carton brings more than buying it again costs, more use does not keep more.
        if (given.salvage <= given.unitCost) expect(used).toBeGreaterThanOrEqual(keep - allowance);
        const brings = retention({ ...given, salvage: given.salvage - times }).keep;
        expect(brings).toBeGreaterThanOrEqual(keep - allowance);
        const held = retention({ ...given, holdingRate: given.holdingRate * times }).keep;
        if (given.salvage <= given.unitCost) expect(held).toBeLessThanOrEqual(keep + allowance);
      }),
    );
  });

  // Silver, Pyke and Peterson's rule (from memory): keep = lot + use (price - salvage) / (price × rate).
  it("is the other textbook rule where the lot is the economic quantity", () => {
    fc.assert(
      fc.property(anyTerms, (given) => {
        const lot = economicOrderQuantity({
          orderCost: given.orderCost,
          holdingCost: given.unitCost * given.holdingRate,
          yearlyUse: given.yearlyUse,
        });
        const rule =
          lot + (given.yearlyUse * (given.unitCost - given.salvage)) / (given.unitCost * given.holdingRate);
        const { keep } = retention({ ...given, lot });
        expect(Math.abs(keep - Math.max(0, rule))).toBeLessThanOrEqual(
          1e-9 * Math.max(1, Math.abs(rule), lot),
        );
      }),
    );
  });

  it("keeps more where letting go costs money, and nothing where a carton brings far more than its price", () => {
    expect(retention({ ...terms, salvage: -1 }).keep).toBeGreaterThan(retention(terms).keep);
    expect(retention({ ...terms, salvage: 40 })).toEqual({ keep: 0, keepYears: 0 });
  });

  it.each([
    { yearlyUse: 0 },
    { unitCost: 0 },
    { holdingRate: 0 },
    { lot: 0 },
    { orderCost: -1 },
    { salvage: Number.NaN },
  ])("refuses %o", (change) => {
    expect(() => retention({ ...terms, ...change })).toThrow(RangeError);
  });
});
