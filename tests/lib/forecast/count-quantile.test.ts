import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { countQuantile } from "#lib/forecast/count-quantile";

describe("count that is not exceeded with a chance", () => {
  it("is Poisson's where the dispersion is 0", () => {
    // Mean 2: e^-2 (1 + 2 + 2 + 4/3 + 2/3) = 0.9473 up to 4, with 4/15 more 0.9834 up to 5.
    expect(countQuantile(2, 0, 0.95)).toBe(5);
    expect(countQuantile(2, 0, 0.94)).toBe(4);
  });

  it("is the geometric distribution's where the dispersion is 1", () => {
    // Variance mean + mean²: chance of more than k is (mean / (1 + mean))^(k + 1): 0.75^10 = 0.056, 0.75^11 = 0.042.
    expect(countQuantile(3, 1, 0.95)).toBe(10);
    expect(countQuantile(3, 1, 0.94)).toBe(9);
  });

  it("is 0 where nothing is expected", () => {
    expect(countQuantile(0, 0.3, 0.99)).toBe(0);
  });

  it("goes over to Poisson's without a jump", () => {
    expect(countQuantile(40, 2e-9, 0.95)).toBe(countQuantile(40, 0, 0.95));
  });

  it("rises with the chance", () => {
    const mean = fc.double({ min: 0, max: 60, noNaN: true });
    const dispersion = fc.double({ min: 0, max: 3, noNaN: true });
    const chance = fc.double({ min: 0.01, max: 0.98, noNaN: true });
    fc.assert(
      fc.property(mean, dispersion, chance, (of, spread, p) => {
        expect(countQuantile(of, spread, p + 0.01)).toBeGreaterThanOrEqual(countQuantile(of, spread, p));
      }),
    );
  });

  it("refuses a chance of 1 and a mean below 0", () => {
    expect(() => countQuantile(2, 0, 1)).toThrow(RangeError);
    expect(() => countQuantile(-1, 0.5, 0.9)).toThrow(RangeError);
  });
});
