import type { Series } from "#lib/forecast/methods/forecasting-method";
import type { SmoothingState } from "#lib/forecast/methods/smoothing";
import { smoothingMethod } from "#lib/forecast/methods/smoothing-method";
import type { SmoothingRecipe } from "#lib/forecast/methods/smoothing-recipe";

const CONSTANTS = [
  { name: "alpha", bounds: [0, 1], starts: [0.01, 0.1, 0.3, 0.6, 0.9] },
  { name: "betaStar", bounds: [0, 1], starts: [0.02, 0.2, 0.9] },
  { name: "gamma", bounds: [0, 1], starts: [0.05, 0.3, 0.8] },
] as const;

/**
 * Holt-Winters with an additive season: level, trend and a season that adds to them. Needs two seasons.
 *
 * @see Winters (1960), Management Science 6; the season is renewed from the level before (state space form)
 * @example holtWintersAdditive.fitted({ values, seasonLength: 12 }).forecast(12)
 */
export const holtWintersAdditiveRecipe: SmoothingRecipe = {
  name: "trend and added season",
  constants: CONSTANTS,
  season: "additive",
  fewestValues: twoSeasons,
  start: (series) => firstSeasons(series, (value, level) => value - level),
};

export const holtWintersAdditive = smoothingMethod(holtWintersAdditiveRecipe);

/**
 * Holt-Winters with a multiplicative season: the season is a factor. Needs two seasons of values above 0.
 *
 * @see Winters (1960), Management Science 6; the season is renewed from the level before (state space form)
 * @example holtWintersMultiplicative.fitted({ values, seasonLength: 12 }).forecast(12)
 */
export const holtWintersMultiplicativeRecipe: SmoothingRecipe = {
  name: "trend and season factor",
  constants: CONSTANTS,
  season: "multiplicative",
  fewestValues: twoSeasons,
  start: (series) => firstSeasons(series, (value, level) => value / level),
};

export const holtWintersMultiplicative = smoothingMethod(holtWintersMultiplicativeRecipe);

function twoSeasons(seasonLength: number): number {
  return 2 * seasonLength;
}

/** Level and seasons from the first season, the trend from its step to the second one. */
function firstSeasons(
  { values, seasonLength }: Series,
  seasonOf: (value: number, level: number) => number,
): SmoothingState {
  const first = values.slice(0, seasonLength);
  const level = meanOf(first);
  const trend = (meanOf(values.slice(seasonLength, 2 * seasonLength)) - level) / seasonLength;
  return { level, trend, seasons: first.map((value) => seasonOf(value, level)) };
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
