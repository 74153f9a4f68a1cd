import { describe, expect, it } from "vitest";
import { holtRecipe } from "#lib/forecast/methods/holt";
import { holtWintersAdditiveRecipe } from "#lib/forecast/methods/holt-winters";
import { simpleSmoothingRecipe } from "#lib/forecast/methods/simple-smoothing";
import { smoothed, smoothingMethod } from "#lib/forecast/methods/smoothing-method";
import { UNUSED_CONSTANTS } from "#lib/forecast/methods/smoothing-recipe";

const series = { values: [10, 20, 40], seasonLength: 1 };

describe("smoothing method of a recipe", () => {
  it("reports the constants of its recipe and no others", () => {
    const given = { alpha: 0.5, betaStar: 0.25, gamma: 9 };
    expect(smoothingMethod(holtRecipe).fixed(series, given).parameters).toEqual({
      alpha: 0.5,
      betaStar: 0.25,
    });
  });

  it("counts constants, level, trend and the seasons that are free", () => {
    expect(smoothingMethod(simpleSmoothingRecipe).freedom(12)).toBe(2);
    expect(smoothingMethod(holtRecipe).freedom(12)).toBe(4);
    expect(smoothingMethod(holtWintersAdditiveRecipe).freedom(12)).toBe(3 + 2 + 11);
  });

  it("smooths from the start it is given", () => {
    // 30; 30 + 0.5 (10 - 30) = 20; 20; 20 + 0.5 (40 - 20) = 30
    const forecaster = smoothed(simpleSmoothingRecipe, series, {
      constants: { ...UNUSED_CONSTANTS, alpha: 0.5 },
      start: { level: 30, trend: 0, seasons: [] },
    });
    expect(forecaster.errors).toEqual([-20, 0, 20]);
    expect(forecaster.forecast(1)).toEqual([30]);
    expect(forecaster.forecastAfter(0, 1)).toEqual([30]);
  });
});
