import {
  type Forecaster,
  type ForecastingMethod,
  requireValues,
  type Series,
} from "#lib/forecast/methods/forecasting-method";
import { smoothed } from "#lib/forecast/methods/smoothing-method";
import type { SmoothingRecipe } from "#lib/forecast/methods/smoothing-recipe";
import type { GivenStateSpace } from "#lib/forecast/methods/state-space-fit";
import { stateSpaceFits } from "#lib/forecast/methods/state-space-fits";
import { LONGEST_SEASON, stateSpaceFreedom } from "#lib/forecast/methods/state-space-model";
import { givenStateSpace, stateSpaceParameters } from "#lib/forecast/methods/state-space-parameters";

/** The plainest model fits alpha, a level and a variance, and the criterion wants two values more. */
const FEWEST_VALUES = 5;

/**
 * Smoothing chosen by likelihood: every state space model that suits the series is fitted, constants and start
 * together, and the one with the least corrected Akaike criterion is taken; `fixed` takes the parameters of
 * one, see `givenStateSpace`. Forecasts are (level + trend) × season, not the model's expected value. The
 * variance grows as with additive errors and seasons, an approximation for the other models. `freedom` is that
 * of the largest model.
 *
 * @see Hyndman, Koehler, Snyder and Grose (2002), International Journal of Forecasting 18 (from memory)
 * @example likelihoodSmoothing.fitted({ values, seasonLength: 12 }).forecast(4)
 */
export const likelihoodSmoothing: ForecastingMethod = {
  name: "likelihood smoothing",
  freedom: (seasonLength) => {
    const hasSeason = seasonLength > 1 && seasonLength <= LONGEST_SEASON;
    const season = hasSeason ? "multiplicative" : "none";
    return stateSpaceFreedom({ error: "multiplicative", trend: "damped", season }, seasonLength);
  },
  fewestValues: () => FEWEST_VALUES,
  fixed: (series, parameters) => {
    requireValues(likelihoodSmoothing, series);
    return smoothedBy(givenStateSpace(likelihoodSmoothing.name, series, parameters), series);
  },
  fitted: (series) => {
    requireValues(likelihoodSmoothing, series);
    return smoothedBy(stateSpaceFits(series)[0], series);
  },
};

function smoothedBy(given: GivenStateSpace, series: Series): Forecaster {
  const recipe: SmoothingRecipe = {
    name: likelihoodSmoothing.name,
    constants: [],
    season: given.model.season,
    fewestValues: likelihoodSmoothing.fewestValues,
    start: () => given.start,
  };
  return { ...smoothed(recipe, series, given), parameters: stateSpaceParameters(given) };
}
