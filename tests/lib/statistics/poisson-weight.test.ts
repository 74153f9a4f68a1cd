import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { logGamma } from "#lib/statistics/log-gamma";
import { poissonWeight } from "#lib/statistics/poisson-weight";

describe("Poisson weight", () => {
  it("poissonWeight(2, 1) is the example of its docstring", () => {
    expect(poissonWeight(2, 1)).toBeCloseTo(0.5 / Math.E, 15);
  });

  it("is mean^x e^-mean / Gamma(x + 1), whole x or not", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 200, noNaN: true }),
        fc.double({ min: 0.001, max: 200, noNaN: true }),
        (x, mean) => {
          const plain = Math.exp(x * Math.log(mean) - mean - logGamma(x + 1));
          expect(Math.abs(poissonWeight(x, mean) - plain)).toBeLessThanOrEqual(1e-12 * plain);
        },
      ),
    );
  });

  it.each([
    [-1, 1],
    [1, 0],
    [Number.NaN, 1],
    [1, Infinity],
  ])("refuses %s with mean %s", (x, mean) => {
    expect(() => poissonWeight(x, mean)).toThrow(RangeError);
  });
});
