import {
  type Forecaster,
  type ForecastingMethod,
  requireValues,
  type Series,
} from "#lib/forecast/methods/forecasting-method";

/**
 * The newest value, for each coming step. The variance grows with the steps ahead.
 *
 * @example naive.fitted({ values: [10, 20], seasonLength: 1 }).forecast(2) // [20, 20]
 */
export const naive: ForecastingMethod = {
  name: "newest week",
  freedom: () => 0,
  fewestValues: () => 1,
  fixed: (series) => lagged(naive, series, 1),
  fitted: (series) => lagged(naive, series, 1),
};

/**
 * The value of a season ago.
 *
 * @example seasonalNaive.fitted({ values: [1, 2, 3, 4], seasonLength: 2 }).forecast(3) // [3, 4, 3]
 */
export const seasonalNaive: ForecastingMethod = {
  name: "a season ago",
  freedom: () => 0,
  fewestValues: (seasonLength) => seasonLength,
  fixed: (series) => lagged(seasonalNaive, series, series.seasonLength),
  fitted: (series) => lagged(seasonalNaive, series, series.seasonLength),
};

function lagged(method: ForecastingMethod, series: Series, lag: number): Forecaster {
  requireValues(method, series);
  const { values } = series;
  const newest = values.slice(-lag);
  return {
    parameters: {},
    errors: values.slice(lag).map((value, index) => value - (values[index] ?? 0)),
    forecast: (steps) => Array.from({ length: steps }, (_, step) => newest[step % lag] ?? 0),
    forecastAfter: (count, steps) =>
      lagged(method, { ...series, values: values.slice(0, count) }, lag).forecast(steps),
    varianceGrowth: (steps) => Array.from({ length: steps }, (_, step) => Math.floor(step / lag) + 1),
  };
}
