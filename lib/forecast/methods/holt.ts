import type { Series } from "#lib/forecast/methods/forecasting-method";
import type { SmoothingState } from "#lib/forecast/methods/smoothing";
import { smoothingMethod } from "#lib/forecast/methods/smoothing-method";
import type { SmoothingRecipe } from "#lib/forecast/methods/smoothing-recipe";

const ALPHA = { name: "alpha", bounds: [0, 1], starts: [0, 0.02, 0.1, 0.3, 0.6, 0.9] } as const;
const BETA = { name: "betaStar", bounds: [0, 1], starts: [0.02, 0.2, 0.9] } as const;
const PHI = { name: "phi", bounds: [0.8, 0.98], starts: [0.85, 0.95] } as const;

/**
 * Holt's linear trend: level and trend are both smoothed. Starts at the first value with the first step as
 * the trend.
 *
 * @see Holt (1957), reprinted in International Journal of Forecasting 20 (2004) (from memory)
 * @example holt.fixed({ values: [10, 20, 30], seasonLength: 1 }, { alpha: 0.5, betaStar: 0.1 }).forecast(2) // [40, 50]
 */
export const holtRecipe: SmoothingRecipe = {
  name: "linear trend",
  constants: [ALPHA, BETA],
  season: "none",
  fewestValues: () => 2,
  start: firstStep,
};

export const holt = smoothingMethod(holtRecipe);

/**
 * Damped trend: as Holt's, the trend fading by `phi` with every step ahead.
 *
 * @see Gardner and McKenzie (1985), Management Science 31 (from memory)
 * @example dampedTrend.fitted({ values: [10, 20, 30, 35], seasonLength: 1 }).forecast(4)
 */
export const dampedTrendRecipe: SmoothingRecipe = {
  name: "damped trend",
  constants: [ALPHA, BETA, PHI],
  season: "none",
  fewestValues: () => 2,
  start: firstStep,
};

export const dampedTrend = smoothingMethod(dampedTrendRecipe);

function firstStep({ values: [first = 0, second = 0] }: Series): SmoothingState {
  return { level: first, trend: second - first, seasons: [] };
}
