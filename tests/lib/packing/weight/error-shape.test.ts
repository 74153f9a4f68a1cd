import { describe, expect, it } from "vitest";
import { errorShape } from "#lib/packing/weight/error-shape";
import { evenRandom } from "#lib/statistics/even-random";
import { mixtureMoments, mixtureQuantile } from "#lib/statistics/mixture";

/** Exponential errors, mean 0 and variance 1: as lopsided as packing never is. */
function lopsided(count: number): { error: number; weight: number }[] {
  const random = evenRandom(3);
  return Array.from({ length: count }, () => ({ error: -Math.log(1 - random()) - 1, weight: 1 }));
}

describe("shape of errors", () => {
  it("is the t distribution before any parcel", () => {
    expect(errorShape([], 4)).toEqual([{ weight: 1, centre: 0, scale: 1, degrees: 4 }]);
  });

  it("adds up to 1, however many errors there are", () => {
    for (const count of [1, 7, 500]) {
      const whole = errorShape(lopsided(count), 4).reduce((sum, { weight }) => sum + weight, 0);
      expect(whole).toBeCloseTo(1, 12);
    }
  });

  it("comes to what was seen", () => {
    const shape = errorShape(lopsided(4000), 30);
    // Quantiles of the exponential distribution less its mean: -ln(1 - p) - 1.
    expect(mixtureQuantile(shape, 0.9)).toBeCloseTo(Math.log(10) - 1, 0);
    expect(mixtureQuantile(shape, 0.5)).toBeCloseTo(Math.log(2) - 1, 0);
    expect(mixtureMoments(shape).variance).toBeGreaterThan(0.85);
    expect(mixtureMoments(shape).variance).toBeLessThan(1.15);
  });

  it("does not ask errors that no longer count", () => {
    expect(errorShape([{ error: 9, weight: 0 }], 6)).toEqual(errorShape([], 6));
  });

  it("counts an error twice that weighs twice", () => {
    const twice = errorShape(
      [
        { error: -1, weight: 1 },
        { error: 1, weight: 2 },
      ],
      4,
    );
    const thrice = errorShape(
      [
        { error: -1, weight: 1 },
        { error: 1, weight: 1 },
        { error: 1, weight: 1 },
      ],
      4,
    );
    expect(mixtureQuantile(twice, 0.7)).toBeCloseTo(mixtureQuantile(thrice, 0.7), 9);
  });
});
