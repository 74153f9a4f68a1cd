import { describe, expect, it } from "vitest";
import {
  classicHoltWintersAdditive,
  classicHoltWintersAdditiveRecipe,
  classicHoltWintersMultiplicativeRecipe,
} from "#lib/forecast/methods/classic-holt-winters";

const CONSTANTS = { alpha: 0.5, betaStar: 0.5, gamma: 0.5 };
// A line 20, 22, 24, 26 with a season of -10 and 10.
const series = { values: [10, 32, 14, 36], seasonLength: 2 };

describe("classic start of trend and added season", () => {
  it("parts the first two seasons into line and season", () => {
    // Trend of the second and third value: (10 + 2 x 32 + 14) / 4 = 22 and (32 + 2 x 14 + 36) / 4 = 24; the line
    // through them has slope 2 and height 20 before the first. Season: 14 - 24 = -10, 32 - 22 = 10.
    expect(classicHoltWintersAdditiveRecipe.start(series)).toEqual({
      level: 20,
      trend: 2,
      seasons: [-10, 10],
    });
  });

  it("begins with the second season, and renews the season from the new level", () => {
    // Says 22 - 10 = 12, is 14: level 0.5 x 24 + 0.5 x 22 = 23, trend 0.5 x 3 + 0.5 x 2 = 2.5, season
    // 0.5 (14 - 23) + 0.5 (-10) = -9.5. Then says 25.5 + 10 = 35.5, and 28 - 9.5 = 18.5 after that.
    const forecaster = classicHoltWintersAdditive.fixed(series, CONSTANTS);
    expect(forecaster.errors).toEqual([2, 0.5]);
    expect(forecaster.forecastAfter(3, 2)).toEqual([35.5, 18.5]);
  });

  it("cannot look ahead before the second season", () => {
    const forecaster = classicHoltWintersAdditive.fixed(series, CONSTANTS);
    expect(forecaster.forecastAfter(2, 1)).toEqual([12]);
    expect(() => forecaster.forecastAfter(1, 1)).toThrow(RangeError);
  });
});

describe("classic start of trend and season factor", () => {
  it("takes factors with a mean of 1", () => {
    const { level, trend, seasons } = classicHoltWintersMultiplicativeRecipe.start(series);
    // 14 / 24 = 0.58333 and 32 / 22 = 1.45455, over their mean 1.01894
    expect([level, trend]).toEqual([20, 2]);
    expect(seasons[0]).toBeCloseTo(0.572491, 6);
    expect(seasons[1]).toBeCloseTo(1.427509, 6);
  });
});
