import { describe, expect, it } from "vitest";
import { simpleAverage, weightedAverage } from "#lib/forecast/methods/average-methods";

const series = (values: readonly number[]) => ({ values, seasonLength: 1 });

describe("moving average as a method", () => {
  it("says the mean of the window for each coming week; its errors begin after the first window", () => {
    const forecaster = simpleAverage.fixed(series([2, 4, 9, 1]), { window: 2 });
    // (9 + 1) / 2 = 5
    expect(forecaster.forecast(3)).toEqual([5, 5, 5]);
    // 9 - (2 + 4) / 2 = 6; 1 - (4 + 9) / 2 = -5.5
    expect(forecaster.errors).toEqual([6, -5.5]);
    // (4 + 9) / 2
    expect(forecaster.forecastAfter(3, 1)).toEqual([6.5]);
  });

  it("refuses a window that is longer than the series", () => {
    expect(() => simpleAverage.fixed(series([1, 2]), { window: 3 })).toThrow(RangeError);
  });

  it("fits the window that was closest: short after a jump, long for uses that go up and down", () => {
    const jump = [...new Array<number>(15).fill(10), ...new Array<number>(15).fill(50)];
    expect(simpleAverage.fitted(series(jump)).parameters).toEqual({ window: 4 });
    const noisy = Array.from({ length: 60 }, (_, week) => [90, 150, 30, 130, 60][week % 5] ?? 0);
    expect(simpleAverage.fitted(series(noisy)).parameters.window).toBeGreaterThan(4);
  });

  it("takes all values where there are fewer than five", () => {
    expect(simpleAverage.fitted(series([3, 5, 10])).forecast(1)).toEqual([6]);
  });
});

describe("weighted moving average as a method", () => {
  it("weighs the newer week more", () => {
    const forecaster = weightedAverage.fixed(series([1, 2, 4]), { window: 2 });
    // (1 x 2 + 2 x 4) / 3 = 10 / 3; the error is 4 - (1 x 1 + 2 x 2) / 3 = 7 / 3
    expect(forecaster.forecast(2)).toEqual([10 / 3, 10 / 3]);
    expect(forecaster.errors).toEqual([4 - 5 / 3]);
  });
});
