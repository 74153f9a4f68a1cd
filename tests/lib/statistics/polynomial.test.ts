import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { polynomial } from "#lib/statistics/polynomial";

describe("polynomial", () => {
  it("polynomial([2, 0, 1], 3) is the example of its docstring", () => {
    expect(polynomial([2, 0, 1], 3)).toBe(19);
  });

  it("without coefficients is 0", () => {
    expect(polynomial([], 5)).toBe(0);
  });

  it("is the sum of its powers", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -9, max: 9 }), { maxLength: 6 }),
        fc.integer({ min: -9, max: 9 }),
        (c, x) => {
          const sum = c.reduce(
            (total, coefficient, index) => total + coefficient * x ** (c.length - 1 - index),
            0,
          );
          expect(polynomial(c, x) + 0).toBe(sum + 0);
        },
      ),
    );
  });
});
