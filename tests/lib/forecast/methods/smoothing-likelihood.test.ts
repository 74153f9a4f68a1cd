import { describe, expect, it } from "vitest";
import {
  correctedAkaike,
  likelihoodResiduals,
  logLikelihood,
} from "#lib/forecast/methods/smoothing-likelihood";

describe("likelihood of a smoothing", () => {
  it("is that of the errors where they are additive", () => {
    // Errors 3 and 4: -2/2 log 25.
    const errors = likelihoodResiduals("additive", [3, 4], [10, 20]);
    expect(errors).toEqual([3, 4]);
    expect(logLikelihood(errors, [10, 20])).toBeCloseTo(-Math.log(25), 12);
  });

  it("is that of the relative errors, less the logarithms of what was expected, where they are multiplicative", () => {
    // Expected 2 and 8, so their geometric mean is 4; relative errors 0.5 and -0.25.
    const errors = likelihoodResiduals("multiplicative", [1, -2], [3, 6]);
    expect(errors[0]).toBeCloseTo(2, 12);
    expect(errors[1]).toBeCloseTo(-1, 12);
    const plain = -Math.log(0.5 ** 2 + 0.25 ** 2) - Math.log(2) - Math.log(8);
    expect(logLikelihood(errors, [3, 6])).toBeCloseTo(plain, 12);
  });

  it("is finite, and the same, for all fits that only rounding keeps from being perfect", () => {
    const values = [5, 5, 5];
    const perfect = logLikelihood([0, 0, 0], values);
    expect(Number.isFinite(perfect)).toBe(true);
    expect(logLikelihood([1e-12, -1e-13, 0], values)).toBe(perfect);
    expect(logLikelihood([1e-3, 0, 0], values)).toBeLessThan(perfect);
    expect(Number.isFinite(logLikelihood([0, 0], [0, 0]))).toBe(true);
  });

  it("is least where nothing was expected, which no relative error can be told of", () => {
    const errors = likelihoodResiduals("multiplicative", [3, 1], [3, 4]);
    expect(logLikelihood(errors, [3, 4])).toBe(Number.NEGATIVE_INFINITY);
  });
});

describe("corrected Akaike criterion", () => {
  it("adds what the numbers fitted cost", () => {
    // k = 3: 20 + 6 + 24 / 6
    expect(correctedAkaike(-10, 2, 10)).toBe(30);
  });

  it("refuses too few values", () => {
    expect(() => correctedAkaike(-10, 2, 4)).toThrow(
      new RangeError("correctedAkaike requires 5 values, got 4"),
    );
    expect(Number.isFinite(correctedAkaike(-10, 2, 5))).toBe(true);
  });
});
