import { describe, expect, it } from "vitest";
import { meanMethod } from "#lib/forecast/methods/mean-method";

const series = { values: [10, 20, 60], seasonLength: 1 };

describe("mean of all weeks", () => {
  it("is the mean; each error is from the mean of the weeks before", () => {
    const forecaster = meanMethod.fitted(series);
    // (10 + 20 + 60) / 3 = 30; 20 - 10 = 10, 60 - 15 = 45
    expect(forecaster.forecast(2)).toEqual([30, 30]);
    expect(forecaster.errors).toEqual([10, 45]);
    expect(forecaster.forecastAfter(2, 1)).toEqual([15]);
    expect(forecaster.varianceGrowth?.(3)).toEqual([1, 1, 1]);
  });

  it("cannot look ahead from nothing", () => {
    expect(() => meanMethod.fitted(series).forecastAfter(0, 1)).toThrow(RangeError);
  });
});
