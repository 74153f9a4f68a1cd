import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gammaQuantile } from "#lib/statistics/gamma-quantile";
import { normalQuantile } from "#lib/statistics/normal-quantile";
import { skewedQuantile } from "#lib/statistics/skewed-quantile";

describe("quantile from three moments", () => {
  it("gives the example of its docstring", () => {
    const guess = skewedQuantile({ mean: 9, deviation: 3, skewness: 1 / 3 }, 1.2815515655446);
    expect(guess).toBeCloseTo(12.934186575879723, 12);
  });

  it("without skewness is that of the normal distribution", () => {
    expect(skewedQuantile({ mean: 10, deviation: 2, skewness: 0 }, 1.5)).toBe(13);
  });

  it("is within 2 in 100 of a deviation of the gamma quantile from shape 4", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 500, noNaN: true }),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (shape, probability) => {
          const deviation = Math.sqrt(shape);
          const moments = { mean: shape, deviation, skewness: 2 / deviation };
          const gap =
            skewedQuantile(moments, normalQuantile(probability)) -
            gammaQuantile(probability, { shape, scale: 1 });
          expect(Math.abs(gap)).toBeLessThan(0.02 * deviation);
        },
      ),
    );
  });

  it("never falls with z, however skewed", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.double({ min: -6, max: 6, noNaN: true }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        (skewness, z, step) => {
          const moments = { mean: 5, deviation: 3, skewness };
          expect(skewedQuantile(moments, z + step)).toBeGreaterThanOrEqual(skewedQuantile(moments, z) - 1e-8);
        },
      ),
    );
  });

  it("refuses a negative moment and one that is no number", () => {
    expect(() => skewedQuantile({ mean: -1, deviation: 1, skewness: 0 }, 0)).toThrow(RangeError);
    expect(() => skewedQuantile({ mean: 1, deviation: Number.NaN, skewness: 0 }, 0)).toThrow(RangeError);
    expect(() => skewedQuantile({ mean: 1, deviation: 1, skewness: -1 }, 0)).toThrow(RangeError);
  });
});
