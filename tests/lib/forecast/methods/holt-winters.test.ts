import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  holtWintersAdditive,
  holtWintersAdditiveRecipe,
  holtWintersMultiplicative,
  holtWintersMultiplicativeRecipe,
} from "#lib/forecast/methods/holt-winters";

const CONSTANTS = { alpha: 0.5, betaStar: 0.5, gamma: 0.5 };
const series = { values: [10, 30, 14, 34], seasonLength: 2 };

describe("trend and added season", () => {
  it("starts from the first season and its step to the second", () => {
    // Means 20 and 24: level 20, trend (24 - 20) / 2 = 2, seasons 10 - 20 and 30 - 20.
    expect(holtWintersAdditiveRecipe.start(series)).toEqual({ level: 20, trend: 2, seasons: [-10, 10] });
  });

  it("renews the season from the line before the value", () => {
    // Says 22 - 10 = 12, is 10: error -2; level 0.5 x 20 + 0.5 x 22 = 21; trend 0.5 x 1 + 0.5 x 2 = 1.5; season
    // 0.5 (10 - 22) + 0.5 (-10) = -11. The next says 22.5 + 10 = 32.5.
    const forecaster = holtWintersAdditive.fixed(series, CONSTANTS);
    expect(forecaster.errors[0]).toBe(-2);
    expect(forecaster.forecastAfter(1, 2)).toEqual([32.5, 13]);
  });
});

describe("trend and season factor", () => {
  it("starts with factors of the first season", () => {
    expect(holtWintersMultiplicativeRecipe.start(series)).toEqual({
      level: 20,
      trend: 2,
      seasons: [0.5, 1.5],
    });
  });

  it("divides by the season and multiplies by it", () => {
    // Says 22 x 0.5 = 11, is 10: level 0.5 x 20 + 0.5 x 22 = 21, trend 1.5. The next says 22.5 x 1.5 = 33.75.
    const forecaster = holtWintersMultiplicative.fixed(series, CONSTANTS);
    expect(forecaster.errors[0]).toBe(-1);
    expect(forecaster.forecastAfter(1, 1)).toEqual([33.75]);
  });

  it("has factors that are the same whatever the size of the uses", () => {
    const uses = fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 8, maxLength: 12 });
    fc.assert(
      fc.property(uses, fc.integer({ min: 2, max: 50 }), (values, times) => {
        const seasonsOf = (of: readonly number[]) =>
          holtWintersMultiplicativeRecipe.start({ values: of, seasonLength: 4 }).seasons;
        const scaled = seasonsOf(values.map((value) => times * value));
        for (const [place, factor] of seasonsOf(values).entries())
          expect(scaled[place]).toBeCloseTo(factor, 10);
      }),
    );
  });

  it("refuses a week without use, and less than two seasons", () => {
    expect(() => holtWintersMultiplicative.fixed({ ...series, values: [10, 0, 14, 34] }, CONSTANTS)).toThrow(
      new RangeError("trend and season factor requires values above 0, got 0"),
    );
    expect(() => holtWintersMultiplicative.fitted({ ...series, values: [10, 30, 14] })).toThrow(RangeError);
  });

  it("counts three constants, level, trend and all seasons but one", () => {
    expect(holtWintersMultiplicative.freedom(12)).toBe(16);
  });

  it("finds a line with a season", () => {
    const values = Array.from(
      { length: 20 },
      (_, week) => (20 + week) * ([0.5, 1, 1.5, 1][week % 4] ?? Number.NaN),
    );
    const [first, second] = holtWintersMultiplicative.fitted({ values, seasonLength: 4 }).forecast(2);
    // (20 + 20) x 0.5 and (20 + 21) x 1
    expect(first).toBeCloseTo(20, 2);
    expect(second).toBeCloseTo(41, 2);
  });
});
