import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  AMOUNT_PER_UNIT,
  amount,
  amountFraction,
  amountOfUnits,
  scaleAmount,
  sumAmounts,
  unitsOf,
} from "#lib/units/amount";

describe("amount", () => {
  it("keeps half a use unit as 6,000 parts", () => {
    expect(amount(6000)).toBe(amountOfUnits(0.5));
  });

  it("turns parts into use units", () => {
    expect(unitsOf(amount(18000))).toBe(1.5);
  });

  it("keeps a third exactly", () => {
    expect(amountFraction(1, 3)).toBe(4000);
  });

  it("sums three thirds of a sheet to exactly one", () => {
    expect(sumAmounts([amount(4000), amount(4000), amount(4000)])).toBe(AMOUNT_PER_UNIT);
  });

  it("sums nothing to zero", () => {
    expect(sumAmounts([])).toBe(0);
  });

  it("takes six thirds as two", () => {
    expect(scaleAmount(amount(4000), 6)).toBe(24000);
  });

  it("reverses an amount without a negative zero", () => {
    expect(scaleAmount(amount(0), -1)).toBe(0);
  });

  it("keeps an inch exactly in feet", () => {
    expect(scaleAmount(amountFraction(1, 12), 12)).toBe(AMOUNT_PER_UNIT);
  });

  it("refuses parts that are not whole", () => {
    expect(() => amount(0.5)).toThrow("amount requires a safe integer, got 0.5");
  });

  it("refuses units that are not a number", () => {
    expect(() => amountOfUnits(Number.NaN)).toThrow(RangeError);
  });

  it("refuses a seventh, which has no exact parts", () => {
    expect(() => amountFraction(1, 7)).toThrow(RangeError);
  });

  it("refuses a fraction over zero", () => {
    expect(() => amountFraction(1, 0)).toThrow(RangeError);
  });

  it("refuses to scale by a fraction", () => {
    expect(() => scaleAmount(amount(1), 0.5)).toThrow("scaleAmount requires a whole number, got 0.5");
  });

  it("refuses a sum that is no longer exact", () => {
    const most = amount(Number.MAX_SAFE_INTEGER);
    expect(() => sumAmounts([most, amount(1)])).toThrow(RangeError);
  });

  it("sums any sequence of halves, thirds and quarters exactly", () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(2, 3, 4), { maxLength: 400 }), (denominators) => {
        const sum = sumAmounts(denominators.map((denominator) => amountFraction(1, denominator)));
        const twelfths = denominators.reduce((total, denominator) => total + 12 / denominator, 0);
        expect(sum * 12).toBe(twelfths * AMOUNT_PER_UNIT);
      }),
    );
  });

  it("sums to the same in any order, and its reversal brings the sum back to zero", () => {
    const parts = fc.array(fc.integer({ min: -1e9, max: 1e9 }).map(amount), { maxLength: 60 });
    fc.assert(
      fc.property(parts, (list) => {
        const sum = sumAmounts(list);
        expect(sumAmounts(list.toReversed())).toBe(sum);
        expect(sumAmounts([sum, ...list.map((each) => scaleAmount(each, -1))])).toBe(0);
      }),
    );
  });
});
