import { bestSearch } from "#lib/forecast/methods/best-search";
import type { Series } from "#lib/forecast/methods/forecasting-method";
import { scaledState } from "#lib/forecast/methods/scaled-state";
import { combinations, leastOf, leastOfEachAlpha, type Residuals } from "#lib/forecast/methods/search-starts";
import { type SmoothingConstants, type SmoothingState, smooth } from "#lib/forecast/methods/smoothing";
import {
  correctedAkaike,
  likelihoodResiduals,
  logLikelihood,
} from "#lib/forecast/methods/smoothing-likelihood";
import { type StateSpaceModel, stateSpaceFreedom } from "#lib/forecast/methods/state-space-model";
import { stateSpaceSearch } from "#lib/forecast/methods/state-space-search";
import { stateSpaceStart } from "#lib/forecast/methods/state-space-start";
import { leastSquares } from "#lib/statistics/least-squares";

/** A model with its constants and the state before the first value. */
export type GivenStateSpace = {
  readonly model: StateSpaceModel;
  readonly constants: SmoothingConstants;
  readonly start: SmoothingState;
};

/** A model fitted, and how well: the larger the likelihood and the less the criterion, the better. */
export type StateSpaceFit = GivenStateSpace & {
  readonly logLikelihood: number;
  readonly correctedAkaike: number;
};

/** Searches from different starts. */
const SEARCHES = 4;
/** One step, hardly damped, settles the start at given constants: there the errors are nearly straight in it. */
const STATE_STEPS = 1;
const STATE_DAMPING = 1e-6;

/**
 * The constants and the state before the first value under which a series is most likely. The likelihood has
 * more than one peak, so the search sets out from the best few points of a grid of constants, each with the
 * state that fits it.
 *
 * @param model which one
 * @param series long enough for it, see `stateSpaceModels`
 * @returns constants, start, logarithm of the likelihood and corrected Akaike criterion
 * @throws RangeError when the series has too few values for the criterion
 * @see Hyndman, Koehler, Snyder and Grose (2002), International Journal of Forecasting 18 (from memory)
 */
export function stateSpaceFit(model: StateSpaceModel, series: Series): StateSpaceFit {
  // Searched in units of the series' size, so that one step suits constants and states.
  const scale = series.values.reduce((sum, value) => sum + Math.abs(value), 0) / series.values.length || 1;
  const values = series.values.map((value) => value / scale);
  const { constants, ruleOf, numbersOf, stateOf, stateBoundsOf } = stateSpaceSearch(model);
  const count = constants.length;
  const residuals: Residuals = (found) => {
    const { errors } = smooth(values, ruleOf(found.slice(0, count)), stateOf(found.slice(count)));
    return likelihoodResiduals(model.error, errors, values);
  };
  const states = numbersOf(stateSpaceStart(model, { ...series, values }));
  const stateBounds = stateBoundsOf(states);
  const grid = combinations(constants.map(({ starts }) => starts));
  const froms = grid.map((from) => {
    const settled = leastSquares({
      residuals: (found) => residuals([...from, ...found]),
      start: states,
      bounds: stateBounds,
      steps: STATE_STEPS,
      damping: STATE_DAMPING,
    });
    return [...from, ...settled.parameters];
  });
  const best = bestSearch(
    { residuals, bounds: [...constants.map(({ bounds }) => bounds), ...stateBounds] },
    leastOf(leastOfEachAlpha(froms, residuals), residuals, SEARCHES),
  ).parameters;
  const likelihood = logLikelihood(residuals(best), values) - values.length * Math.log(scale);
  return {
    model,
    constants: ruleOf(best.slice(0, count)).constants,
    start: scaledState(centred(stateOf(best.slice(count)), model.season), scale, model.season),
    logLikelihood: likelihood,
    correctedAkaike: correctedAkaike(
      likelihood,
      stateSpaceFreedom(model, series.seasonLength),
      values.length,
    ),
  };
}

/** The same forecasts from a state whose seasons average 0, or 1 where they are factors. */
function centred(state: SmoothingState, season: StateSpaceModel["season"]): SmoothingState {
  if (season === "none") return state;
  const { level, trend, seasons } = state;
  const mean = seasons.reduce((sum, each) => sum + each, 0) / seasons.length;
  if (season === "additive") {
    return { level: level + mean, trend, seasons: seasons.map((each) => each - mean) };
  }
  return { level: level * mean, trend: trend * mean, seasons: seasons.map((each) => each / mean) };
}
