import type { Series } from "#lib/forecast/methods/forecasting-method";
import {
  holtWintersAdditiveRecipe,
  holtWintersMultiplicativeRecipe,
} from "#lib/forecast/methods/holt-winters";
import { decomposition } from "#lib/forecast/methods/season-figure";
import type { SmoothingState } from "#lib/forecast/methods/smoothing";
import { smoothingMethod } from "#lib/forecast/methods/smoothing-method";
import type { SmoothingRecipe } from "#lib/forecast/methods/smoothing-recipe";
import { straightLine } from "#lib/forecast/methods/straight-line";

/**
 * Holt-Winters with an additive season in Winters' own form: the first two seasons are parted into line and
 * season, the errors begin with the second season, and the season is renewed from the new level.
 *
 * @see Winters (1960), Management Science 6; the start as in `HoltWinters` of R's stats package (from memory)
 * @example classicHoltWintersAdditive.fixed({ values, seasonLength: 12 },
 *   { alpha: 0.2, betaStar: 0.1, gamma: 0.1 }).forecast(12)
 */
export const classicHoltWintersAdditiveRecipe: SmoothingRecipe = {
  ...holtWintersAdditiveRecipe,
  name: "trend and added season, classic start",
  start: (series) => decomposedStart(series, "additive"),
  skipped: ({ seasonLength }) => seasonLength,
  seasonFrom: "new-level",
};

export const classicHoltWintersAdditive = smoothingMethod(classicHoltWintersAdditiveRecipe);

/**
 * Holt-Winters with a season factor in Winters' own form, started as the additive one. Needs values above 0.
 *
 * @see Winters (1960), Management Science 6; the start as in `HoltWinters` of R's stats package (from memory)
 * @example classicHoltWintersMultiplicative.fixed({ values, seasonLength: 12 },
 *   { alpha: 0.2, betaStar: 0.1, gamma: 0.1 }).forecast(12)
 */
export const classicHoltWintersMultiplicativeRecipe: SmoothingRecipe = {
  ...holtWintersMultiplicativeRecipe,
  name: "trend and season factor, classic start",
  start: (series) => decomposedStart(series, "multiplicative"),
  skipped: ({ seasonLength }) => seasonLength,
  seasonFrom: "new-level",
};

export const classicHoltWintersMultiplicative = smoothingMethod(classicHoltWintersMultiplicativeRecipe);

/** Level and slope of the straight line through the trend of the first two seasons, counted from 1. */
function decomposedStart(
  { values, seasonLength }: Series,
  kind: "additive" | "multiplicative",
): SmoothingState {
  const twoSeasons = { values: values.slice(0, 2 * seasonLength), seasonLength };
  const { trend, figure } = decomposition(twoSeasons, kind);
  const { level, slope } = straightLine(trend.filter((value) => value !== null));
  return { level, trend: slope, seasons: figure };
}
