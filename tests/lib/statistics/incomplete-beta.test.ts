import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { binomialWeight, incompleteBeta } from "#lib/statistics/incomplete-beta";

const side = fc.double({ min: 0.01, max: 100, noNaN: true });
const share = fc.double({ min: 0.001, max: 0.999, noNaN: true });

describe("incomplete beta function", () => {
  it("incompleteBeta(2, 1, 0.5) is the example of its docstring", () => {
    expect(incompleteBeta(2, 1, 0.5).lower).toBeCloseTo(0.25, 15);
  });

  it("with b = 1 is x^a, with a = b = 1/2 the arcsine law", () => {
    fc.assert(
      fc.property(side, share, (a, x) => {
        expect(Math.abs(incompleteBeta(a, 1, x).lower - x ** a)).toBeLessThanOrEqual(1e-12 * x ** a);
        expect(incompleteBeta(0.5, 0.5, x).lower).toBeCloseTo((2 / Math.PI) * Math.asin(Math.sqrt(x)), 13);
      }),
    );
  });

  it("has two parts of 1, which change places with a and b", () => {
    fc.assert(
      fc.property(side, side, share, (a, b, x) => {
        const { lower, upper } = incompleteBeta(a, b, x);
        const turned = incompleteBeta(b, a, 1 - x, x);
        expect(lower + upper).toBeCloseTo(1, 13);
        expect(turned.lower).toBeCloseTo(upper, 12);
      }),
    );
  });

  it("steps from a to a + 1 by the binomial weight", () => {
    fc.assert(
      fc.property(side, side, share, (a, b, x) => {
        const step = incompleteBeta(a, b, x).lower - incompleteBeta(a + 1, b, x).lower;
        expect(step).toBeCloseTo((binomialWeight(a, b, x, 1 - x) * b) / (a + b), 12);
      }),
    );
  });

  it("is 0 and 1 at the ends", () => {
    expect(incompleteBeta(2, 3, 0)).toEqual({ lower: 0, upper: 1 });
    expect(incompleteBeta(2, 3, 1)).toEqual({ lower: 1, upper: 0 });
  });

  it.each([
    [0, 1, 0.5],
    [1, -1, 0.5],
    [1, 1, 1.1],
    [1, 1, -0.1],
    [Infinity, 1, 0.5],
    [1, 1, Number.NaN],
  ])("refuses a %s, b %s, x %s", (a, b, x) => {
    expect(() => incompleteBeta(a, b, x)).toThrow(RangeError);
  });
});

describe("binomial weight", () => {
  it("of 1 success and 1 failure is a half, of 3 and 2 at 0.4 is 10 x 0.4^3 x 0.6^2", () => {
    expect(binomialWeight(1, 1, 0.5, 0.5)).toBeCloseTo(0.5, 15);
    expect(binomialWeight(3, 2, 0.4, 0.6)).toBeCloseTo(10 * 0.4 ** 3 * 0.6 ** 2, 15);
  });

  it("refuses what is not above 0", () => {
    expect(() => binomialWeight(0, 1, 0.5, 0.5)).toThrow(RangeError);
    expect(() => binomialWeight(1, 1, 0, 1)).toThrow(RangeError);
  });
});
