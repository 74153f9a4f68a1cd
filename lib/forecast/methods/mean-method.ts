import { flatForecaster } from "#lib/forecast/methods/flat-forecaster";
import {
  type Forecaster,
  type ForecastingMethod,
  requireValues,
  type Series,
} from "#lib/forecast/methods/forecasting-method";
import { movingAverage } from "#lib/forecast/moving-average";

/**
 * The mean of all values so far. Its errors are those of the mean of the values before each.
 *
 * Variance at each step: (1 + 1/n) of the values' variance.
 *
 * @example meanMethod.fitted({ values: [10, 20], seasonLength: 1 }).forecast(1) // [15]
 */
export const meanMethod: ForecastingMethod = {
  name: "mean of all weeks",
  freedom: () => 1,
  fewestValues: () => 1,
  fixed: (series) => forecaster(series),
  fitted: (series) => forecaster(series),
};

function forecaster(series: Series): Forecaster {
  requireValues(meanMethod, series);
  let sum = 0;
  const errors = series.values.flatMap((value, index) => {
    const error = value - sum / index;
    sum += value;
    return index === 0 ? [] : [error];
  });
  return flatForecaster({
    values: series.values,
    parameters: {},
    errors,
    levelAfter: (seen) => movingAverage(seen, seen.length),
    varianceGrowth: (steps) => new Array<number>(steps).fill(1),
  });
}
