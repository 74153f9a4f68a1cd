import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { incompleteGamma } from "#lib/statistics/incomplete-gamma";
import { normalCumulative } from "#lib/statistics/normal-cumulative";
import { poissonWeight } from "#lib/statistics/poisson-weight";

const shape = fc.double({ min: 0.01, max: 300, noNaN: true });
const ratio = fc.double({ min: 0.01, max: 4, noNaN: true });

describe("incomplete gamma function", () => {
  it("incompleteGamma(1, 2) is the example of its docstring", () => {
    expect(incompleteGamma(1, 2).upper).toBeCloseTo(Math.exp(-2), 15);
  });

  it("with shape 1/2 is the normal distribution of sqrt(2 x)", () => {
    for (const x of [0.01, 0.5, 1.4, 1.6, 10, 300]) {
      const upper = 2 * normalCumulative(-Math.sqrt(2 * x));
      expect(Math.abs(incompleteGamma(0.5, x).upper / upper - 1)).toBeLessThan(1e-13);
    }
  });

  it("has two parts of 1", () => {
    fc.assert(
      fc.property(shape, ratio, (a, of) => {
        const { lower, upper } = incompleteGamma(a, a * of);
        expect(lower + upper).toBeCloseTo(1, 14);
        expect(Math.min(lower, upper)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it("steps from shape to shape + 1 by the Poisson weight, across series and fraction", () => {
    fc.assert(
      fc.property(shape, ratio, (a, of) => {
        const x = a * of;
        const step = incompleteGamma(a + 1, x).upper - incompleteGamma(a, x).upper;
        expect(step).toBeCloseTo(poissonWeight(a, x), 13);
      }),
    );
  });

  it("is 0 and 1 at x = 0", () => {
    expect(incompleteGamma(3, 0)).toEqual({ lower: 0, upper: 1 });
  });

  it.each([
    [0, 1],
    [1, -1],
    [Number.NaN, 1],
    [1, Infinity],
  ])("refuses shape %s and x %s", (a, x) => {
    expect(() => incompleteGamma(a, x)).toThrow(RangeError);
  });
});
