import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { poissonTails } from "#lib/statistics/poisson";
import { poissonQuantile } from "#lib/statistics/poisson-quantile";

describe("Poisson quantile", () => {
  it("poissonQuantile(0.95, 5) is the example of its docstring", () => {
    expect(poissonQuantile(0.95, 5)).toBe(9);
  });

  it("is the least whole number whose distribution function reaches the probability", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true }),
        fc.double({ min: 0.001, max: 20_000, noNaN: true }),
        (probability, mean) => {
          const found = poissonQuantile(probability, mean);
          expect(poissonTails(found, mean).lower).toBeGreaterThanOrEqual(probability * (1 - 1e-12));
          expect(poissonTails(found - 1, mean).lower).toBeLessThan(probability);
        },
      ),
    );
  });

  it("of the distribution function is the count itself", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 300 }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (count, z) => {
          const mean = Math.max(0.5, count + z * Math.sqrt(count));
          expect(poissonQuantile(poissonTails(count, mean).lower, mean)).toBe(count);
        },
      ),
    );
  });

  it("with mean 0 is 0", () => {
    expect(poissonQuantile(0.999, 0)).toBe(0);
  });

  it.each([
    [0, 1],
    [1, 1],
    [0.5, -1],
    [0.5, Infinity],
    [1, 0],
  ])("refuses probability %s with mean %s", (probability, mean) => {
    expect(() => poissonQuantile(probability, mean)).toThrow(RangeError);
  });
});
