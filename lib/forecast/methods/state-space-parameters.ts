import { type MethodParameters, parameter, type Series } from "#lib/forecast/methods/forecasting-method";
import type { SmoothingState } from "#lib/forecast/methods/smoothing";
import { UNUSED_CONSTANTS } from "#lib/forecast/methods/smoothing-recipe";
import type { GivenStateSpace } from "#lib/forecast/methods/state-space-fit";
import type { StateSpaceModel } from "#lib/forecast/methods/state-space-model";
import { stateSpaceStart } from "#lib/forecast/methods/state-space-start";

/**
 * A model, its constants and its start as numbers by their names, from which `givenStateSpace` makes the same
 * again: `alpha`; `betaStar` with a trend, `phi` with a damped one; `gamma` with a season;
 * `multiplicativeError` and `multiplicativeSeason` 1 where they are; `level`, `trend`, `season1` and on.
 *
 * @param given model, constants, start
 */
export function stateSpaceParameters({ model, constants, start }: GivenStateSpace): MethodParameters {
  const { trend, season } = model;
  return {
    alpha: constants.alpha,
    ...(trend !== "none" && { betaStar: constants.betaStar }),
    ...(trend === "damped" && { phi: constants.phi }),
    ...(season !== "none" && { gamma: constants.gamma }),
    ...(model.error === "multiplicative" && { multiplicativeError: 1 }),
    ...(season === "multiplicative" && { multiplicativeSeason: 1 }),
    level: start.level,
    ...(trend !== "none" && { trend: start.trend }),
    ...Object.fromEntries(start.seasons.map((each, index) => [`season${index + 1}`, each])),
  };
}

/**
 * The model that parameters stand for, see `stateSpaceParameters`. Without `level` the start is made from the
 * first values.
 *
 * @param method for the message
 * @param series that the model is for
 * @param parameters at least `alpha`
 * @returns model, constants, start
 * @throws RangeError when a parameter is missing or no number, or when the model does not suit the series
 * @example givenStateSpace("smoothing", { values: [3, 4, 5, 4, 6], seasonLength: 1 }, { alpha: 0.3 })
 */
export function givenStateSpace(
  method: string,
  series: Series,
  parameters: MethodParameters,
): GivenStateSpace {
  const model = modelOf(parameters);
  requireSuited(method, series, model);
  const named = (name: string): number => parameter(parameters, name, method);
  const hasTrend = model.trend !== "none";
  const hasSeason = model.season !== "none";
  const constants = {
    alpha: named("alpha"),
    betaStar: hasTrend ? named("betaStar") : UNUSED_CONSTANTS.betaStar,
    phi: model.trend === "damped" ? named("phi") : UNUSED_CONSTANTS.phi,
    gamma: hasSeason ? named("gamma") : UNUSED_CONSTANTS.gamma,
  };
  if (parameters.level === undefined) return { model, constants, start: stateSpaceStart(model, series) };
  const start: SmoothingState = {
    level: named("level"),
    trend: hasTrend ? named("trend") : 0,
    seasons: Array.from({ length: hasSeason ? series.seasonLength : 0 }, (_, index) =>
      named(`season${index + 1}`),
    ),
  };
  return { model, constants, start };
}

function modelOf(parameters: MethodParameters): StateSpaceModel {
  const seasonal = parameters.multiplicativeSeason === 1 ? "multiplicative" : "additive";
  const rising = parameters.phi === undefined ? "additive" : "damped";
  return {
    error: parameters.multiplicativeError === 1 ? "multiplicative" : "additive",
    trend: parameters.betaStar === undefined && parameters.phi === undefined ? "none" : rising,
    season: parameters.gamma === undefined && parameters.multiplicativeSeason !== 1 ? "none" : seasonal,
  };
}

function requireSuited(method: string, { values, seasonLength }: Series, model: StateSpaceModel): void {
  if (model.season === "multiplicative" && model.error === "additive") {
    throw new RangeError(`${method} requires multiplicativeError 1 with multiplicativeSeason 1`);
  }
  const least = Math.min(...values);
  if (model.error === "multiplicative" && least <= 0) {
    throw new RangeError(`${method} requires values above 0 for multiplicativeError 1, got ${least}`);
  }
  if (model.season === "none") return;
  if (seasonLength < 2) throw new RangeError(`${method} requires a season of 2 or more, got ${seasonLength}`);
  if (values.length < 2 * seasonLength) {
    throw new RangeError(`${method} requires ${2 * seasonLength} values for a season, got ${values.length}`);
  }
}
