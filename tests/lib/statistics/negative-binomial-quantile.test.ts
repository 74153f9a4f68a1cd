import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { negativeBinomialTails } from "#lib/statistics/negative-binomial";
import { negativeBinomialQuantile } from "#lib/statistics/negative-binomial-quantile";
import { poissonQuantile } from "#lib/statistics/poisson-quantile";

const size = fc.double({ min: 0.01, max: 1000, noNaN: true });

describe("negative binomial quantile", () => {
  it("negativeBinomialQuantile(0.95, { mean: 5, size: 1.5 }) is the example of its docstring", () => {
    expect(negativeBinomialQuantile(0.95, { mean: 5, size: 1.5 })).toBe(14);
  });

  it("is the least whole number whose distribution function reaches the probability", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true }),
        fc.double({ min: 0.001, max: 5000, noNaN: true }),
        size,
        (probability, mean, of) => {
          const demand = { mean, size: of };
          const found = negativeBinomialQuantile(probability, demand);
          expect(negativeBinomialTails(found, demand).lower).toBeGreaterThanOrEqual(
            probability * (1 - 1e-12),
          );
          expect(negativeBinomialTails(found - 1, demand).lower).toBeLessThan(probability);
        },
      ),
    );
  });

  it("of the distribution function is the count itself", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 100 }),
        fc.double({ min: 0.5, max: 50, noNaN: true }),
        (count, of) => {
          const demand = { mean: Math.max(0.5, count), size: of };
          expect(negativeBinomialQuantile(negativeBinomialTails(count, demand).lower, demand)).toBe(count);
        },
      ),
    );
  });

  it("with a large size is the Poisson quantile", () => {
    for (const probability of [0.1, 0.5, 0.9, 0.99]) {
      expect(negativeBinomialQuantile(probability, { mean: 33.3, size: 1e9 })).toBe(
        poissonQuantile(probability, 33.3),
      );
    }
  });

  it("with mean 0 is 0", () => {
    expect(negativeBinomialQuantile(0.999, { mean: 0, size: 1 })).toBe(0);
  });

  it.each([
    [0, 1, 1],
    [1, 1, 1],
    [0.5, -1, 1],
    [0.5, 1, 0],
    [0.5, 1, Infinity],
  ])("refuses probability %s with mean %s and size %s", (probability, mean, of) => {
    expect(() => negativeBinomialQuantile(probability, { mean, size: of })).toThrow(RangeError);
  });
});
