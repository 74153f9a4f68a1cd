import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { likelihoodSmoothing } from "#lib/forecast/methods/likelihood-smoothing";

const STEPS = 6;

describe("smoothing chosen by likelihood", () => {
  it("forecasts by hand what given parameters say", () => {
    // alpha 0.5, trend kept: lines 11, 12, 13, 14, 15; values on them but the last, 4 above: level 17, trend 1.
    const series = { values: [11, 12, 13, 14, 19], seasonLength: 1 };
    const given = { alpha: 0.5, betaStar: 0, level: 10, trend: 1 };
    const forecaster = likelihoodSmoothing.fixed(series, given);
    expect(forecaster.errors).toEqual([0, 0, 0, 0, 4]);
    expect(forecaster.forecast(2)).toEqual([18, 19]);
    expect(forecaster.forecastAfter(4, 1)).toEqual([15]);
    expect(forecaster.varianceGrowth?.(3)).toEqual([1, 1.25, 1.5]);
    expect(forecaster.parameters).toEqual(given);
  });

  it("multiplies level and trend by the season", () => {
    // Lines 11, 12, 13, 14 and factors 0.5, 1.5 met each time: next 15 × 0.5 and 16 × 1.5.
    const series = { values: [5.5, 18, 6.5, 21, 7.5], seasonLength: 2 };
    const season = {
      multiplicativeError: 1,
      multiplicativeSeason: 1,
      gamma: 0.1,
      season1: 0.5,
      season2: 1.5,
    };
    const given = { alpha: 0.2, betaStar: 0.1, level: 10, trend: 1, ...season };
    const [first, second] = likelihoodSmoothing.fixed(series, given).forecast(2);
    expect(first).toBeCloseTo(16 * 1.5, 9);
    expect(second).toBeCloseTo(17 * 0.5, 9);
  });

  it("is the same again with the parameters that it found", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 5, maxLength: 18 }),
        fc.integer({ min: 1, max: 4 }),
        (values, seasonLength) => {
          const series = { values, seasonLength };
          const fitted = likelihoodSmoothing.fitted(series);
          const again = likelihoodSmoothing.fixed(series, fitted.parameters);
          expect(again.forecast(STEPS)).toEqual(fitted.forecast(STEPS));
          expect(again.errors).toEqual(fitted.errors);
        },
      ),
      { numRuns: 10 },
    );
  });

  it("takes at most its freedom of numbers from a series", () => {
    // alpha, beta, phi, level, trend; with a season gamma and all seasons but one
    expect(likelihoodSmoothing.freedom(1)).toBe(5);
    expect(likelihoodSmoothing.freedom(12)).toBe(17);
    expect(likelihoodSmoothing.freedom(52)).toBe(5);
  });

  it("finds a season factor that grows with the level", () => {
    const values = Array.from(
      { length: 32 },
      (_, week) => (20 + 3 * week) * ([0.6, 1.4, 1.1, 0.9][week % 4] ?? Number.NaN),
    );
    const forecaster = likelihoodSmoothing.fitted({ values, seasonLength: 4 });
    expect(forecaster.parameters.multiplicativeSeason).toBe(1);
    for (const [step, wanted] of [116 * 0.6, 119 * 1.4, 122 * 1.1, 125 * 0.9].entries()) {
      expect(forecaster.forecast(4)[step]).toBeCloseTo(wanted, 3);
    }
  });
});
