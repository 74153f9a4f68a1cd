import { describe, expect, it } from "vitest";
import { naive, seasonalNaive } from "#lib/forecast/methods/naive";

describe("newest week", () => {
  it("is said again for every step, with a variance that grows by one a step", () => {
    const forecaster = naive.fixed({ values: [10, 25, 20], seasonLength: 2 }, {});
    expect(forecaster.forecast(3)).toEqual([20, 20, 20]);
    expect(forecaster.errors).toEqual([15, -5]);
    expect(forecaster.varianceGrowth?.(3)).toEqual([1, 2, 3]);
    expect(forecaster.forecastAfter(2, 1)).toEqual([25]);
  });
});

describe("a season ago", () => {
  const series = { values: [1, 2, 3, 4, 7], seasonLength: 3 };

  it("comes round, with a variance that grows by one a season", () => {
    const forecaster = seasonalNaive.fitted(series);
    // The last three values are 3, 4, 7.
    expect(forecaster.forecast(5)).toEqual([3, 4, 7, 3, 4]);
    // 4 - 1, 7 - 2
    expect(forecaster.errors).toEqual([3, 5]);
    expect(forecaster.varianceGrowth?.(5)).toEqual([1, 1, 1, 2, 2]);
  });

  it("asks for a whole season, also when it looks back", () => {
    expect(() => seasonalNaive.fitted({ values: [1, 2], seasonLength: 3 })).toThrow(RangeError);
    expect(() => seasonalNaive.fitted(series).forecastAfter(2, 1)).toThrow(RangeError);
  });
});
