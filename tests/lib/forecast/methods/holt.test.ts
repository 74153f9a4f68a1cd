import { describe, expect, it } from "vitest";
import { dampedTrend, holt } from "#lib/forecast/methods/holt";

const series = (values: readonly number[]) => ({ values, seasonLength: 1 });

describe("linear trend", () => {
  it("smooths level and trend, from the first value and the first step on", () => {
    // Before the first value: level 10, trend 10. Week 1: says 20, is 10: level 15, trend 10 + 0.5 (5 - 10) = 7.5.
    // Week 2: says 22.5, is 20: level 21.25, trend 7.5 + 0.5 (6.25 - 7.5) = 6.875.
    const forecaster = holt.fixed(series([10, 20]), { alpha: 0.5, betaStar: 0.5 });
    expect(forecaster.errors).toEqual([-10, -2.5]);
    expect(forecaster.forecast(2)).toEqual([28.125, 35]);
  });

  it("finds a straight line, whatever its slope", () => {
    for (const slope of [-3, 0, 2]) {
      const line = Array.from({ length: 10 }, (_, week) => 40 + slope * week);
      for (const [step, value] of holt.fitted(series(line)).forecast(3).entries()) {
        expect(value).toBeCloseTo(40 + slope * (10 + step), 4);
      }
    }
  });

  it("asks for two values, and counts two constants and two states", () => {
    expect(() => holt.fitted(series([1]))).toThrow(RangeError);
    expect(holt.freedom(1)).toBe(4);
  });
});

describe("damped trend", () => {
  it("adds less of the trend with every step", () => {
    // Never learns: level 10 and trend 10 damped by 0.5: level 15, trend 5; level 17.5, trend 2.5; then 18.75, 19.375
    const forecaster = dampedTrend.fixed(series([10, 20]), { alpha: 0, betaStar: 0, phi: 0.5 });
    expect(forecaster.forecast(2)).toEqual([18.75, 19.375]);
    expect(dampedTrend.freedom(1)).toBe(5);
  });
});
