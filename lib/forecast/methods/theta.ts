import {
  type Forecaster,
  type ForecastingMethod,
  type MethodParameters,
  parameter,
  requireValues,
  type Series,
} from "#lib/forecast/methods/forecasting-method";
import { isSeasonal } from "#lib/forecast/methods/is-seasonal";
import { decomposition } from "#lib/forecast/methods/season-figure";
import { simpleSmoothingRecipe } from "#lib/forecast/methods/simple-smoothing";
import { smooth } from "#lib/forecast/methods/smoothing";
import { smoothingFit } from "#lib/forecast/methods/smoothing-fit";
import type { SmoothingRecipe } from "#lib/forecast/methods/smoothing-recipe";
import { straightLine } from "#lib/forecast/methods/straight-line";

const FEWEST_VALUES = 2;
const LEAST_FACTOR = 1e-10;
const SMOOTHING: SmoothingRecipe = {
  ...simpleSmoothingRecipe,
  constants: [{ name: "alpha", bounds: [1e-4, 0.9999], starts: [0.02, 0.1, 0.3, 0.6, 0.9] }],
};

/**
 * Theta: simple smoothing with half the slope of the straight line through the series, which is what the
 * mean of its two theta lines comes to. A season is taken out before and put back after: by a fit where the
 * autocorrelation shows one, else where the parameter `season` is 1. A look back works out slope and season
 * from what had been seen by then; the errors begin where it could.
 *
 * l[n] + slope/2 ((h - 1) + (1 - (1 - alpha)^n) / alpha)
 *
 * @see Assimakopoulos and Nikolopoulos (2000), International Journal of Forecasting 16; Hyndman and Billah
 * (2003), International Journal of Forecasting 19 (from memory)
 * @example theta.fixed({ values: [10, 12, 14], seasonLength: 1 }, { alpha: 0.3 }).forecast(2)
 */
export const theta: ForecastingMethod = {
  name: "theta",
  freedom: () => 4,
  fewestValues: () => FEWEST_VALUES,
  fixed: (series, parameters) => thetaForecaster(series, parameters),
  fitted: (series) => {
    requireValues(theta, series);
    const figure = isSeasonal(series) ? seasonFigure(series) : null;
    const smoothing = bestSmoothing(withoutSeason(series.values, figure));
    return thetaForecaster(series, { ...smoothing, season: figure === null ? 0 : 1 });
  },
};

function thetaForecaster(series: Series, parameters: MethodParameters): Forecaster {
  const { values, seasonLength } = series;
  const ahead = aheadOf(series, parameters);
  const afterOnly = (count: number, steps: number): number[] =>
    aheadOf({ values: values.slice(0, count), seasonLength }, parameters).forecast(steps);
  const first = ahead.figure === null ? FEWEST_VALUES : 2 * seasonLength;
  return {
    parameters: { ...parameters, alpha: ahead.alpha, halfSlope: ahead.halfSlope },
    errors: values.slice(first).map((value, index) => value - (afterOnly(first + index, 1)[0] ?? 0)),
    forecast: ahead.forecast,
    forecastAfter: afterOnly,
    varianceGrowth: (steps) => Array.from({ length: steps }, (_, step) => 1 + step * ahead.alpha ** 2),
  };
}

function aheadOf(series: Series, parameters: MethodParameters) {
  requireValues(theta, series);
  const alpha = Math.max(LEAST_FACTOR, parameter(parameters, "alpha", theta.name));
  const figure = parameters.season === 1 ? seasonFigure(series) : null;
  const plain = withoutSeason(series.values, figure);
  const count = plain.length;
  const level = parameters.level ?? plain[0] ?? 0;
  const { state } = smooth(plain, ruleOf(alpha), { level, trend: 0, seasons: [] });
  const halfSlope = straightLine(plain).slope / 2;
  const first = (1 - (1 - alpha) ** count) / alpha;
  const forecast = (steps: number): number[] =>
    Array.from({ length: steps }, (_, step) => {
      const factor = figure === null ? 1 : (figure[(count + step) % figure.length] ?? 1);
      return (state.level + halfSlope * (step + first)) * factor;
    });
  return { alpha, figure, halfSlope, forecast };
}

function ruleOf(alpha: number) {
  const constants = { alpha, betaStar: 0, phi: 1, gamma: 0 };
  return { constants, season: "none", seasonFrom: "old-level" } as const;
}

function bestSmoothing(values: readonly number[]): MethodParameters {
  const { constants, start } = smoothingFit(SMOOTHING, { values, seasonLength: 1 }, "constants-and-start");
  return { alpha: constants.alpha, level: start.level };
}

function seasonFigure(series: Series): readonly number[] | null {
  if (series.values.length < 2 * series.seasonLength) return null;
  const { figure } = decomposition(series, "multiplicative");
  return figure.every((factor) => Math.abs(factor) >= LEAST_FACTOR) ? figure : null;
}

function withoutSeason(values: readonly number[], figure: readonly number[] | null): readonly number[] {
  if (figure === null) return values;
  return values.map((value, index) => value / (figure[index % figure.length] ?? 1));
}
