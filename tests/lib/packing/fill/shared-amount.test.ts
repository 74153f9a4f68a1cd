import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sharedAmount } from "#lib/packing/fill/shared-amount";
import { amount, amountOfUnits, sumAmounts, unitsOf } from "#lib/units/amount";

const half = amountOfUnits(0.5);

describe("sharedAmount", () => {
  it("shares in whole steps, which add up", () => {
    const shares = sharedAmount(amountOfUnits(7.5), [1, 2, 1], half);
    expect(shares.map(unitsOf)).toEqual([2, 3.5, 2]);
  });

  it("adds up to the whole, each within a step of its due", () => {
    const weights = fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(
        fc.nat(500),
        weights.filter((list) => list.some((each) => each > 0)),
        (steps, list) => {
          const whole = amount(steps * half);
          const shares = sharedAmount(whole, list, half);
          expect(sumAmounts(shares)).toBe(whole);
          const sum = list.reduce((total, each) => total + each, 0);
          const off = shares.map((share, index) => Math.abs(share - (whole * (list[index] ?? 0)) / sum));
          expect(Math.max(...off)).toBeLessThanOrEqual(half + 1e-6);
          expect(Math.min(...shares)).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });

  it("refuses part of a step, and weights of nothing", () => {
    expect(() => sharedAmount(amount(1), [1], half)).toThrow(RangeError);
    expect(() => sharedAmount(half, [0, 0], half)).toThrow(RangeError);
  });
});
