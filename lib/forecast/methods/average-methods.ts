import { flatForecaster } from "#lib/forecast/methods/flat-forecaster";
import {
  type Forecaster,
  type ForecastingMethod,
  type MethodParameters,
  parameter,
  requireValues,
  type Series,
} from "#lib/forecast/methods/forecasting-method";
import { movingAverage } from "#lib/forecast/moving-average";
import { weightedMovingAverage } from "#lib/forecast/weighted-moving-average";

/** Windows that a fit chooses from, in weeks. */
const WINDOWS = [4, 8, 13];

/**
 * Simple moving average as a method; the fit takes the window with the least mean squared one-step error.
 *
 * @example simpleAverage.fixed({ values: [1, 2, 3], seasonLength: 1 }, { window: 2 }).forecast(1) // [2.5]
 */
export const simpleAverage = averageMethod("moving average", movingAverage);

/**
 * Weighted moving average as a method: newer weeks weigh more.
 *
 * @example weightedAverage.fixed({ values: [1, 2, 4], seasonLength: 1 }, { window: 2 }).forecast(1)
 */
export const weightedAverage = averageMethod("weighted moving average", weightedMovingAverage);

type Average = (values: readonly number[], window: number) => number;

function averageMethod(name: string, average: Average): ForecastingMethod {
  const method: ForecastingMethod = {
    name,
    freedom: () => 1,
    fewestValues: () => 1,
    fixed: (series, parameters) => averaged(method, series, { parameters, average }),
    fitted: (series) => {
      const windows = WINDOWS.filter((window) => window < series.values.length);
      const shortest = Math.min(series.values.length, WINDOWS[0] ?? 1);
      const tried = (windows.length > 0 ? windows : [shortest]).map((window) =>
        averaged(method, series, { parameters: { window }, average }),
      );
      return tried.reduce((best, one) => (meanSquare(one.errors) < meanSquare(best.errors) ? one : best));
    },
  };
  return method;
}

function averaged(
  method: ForecastingMethod,
  series: Series,
  { parameters, average }: { readonly parameters: MethodParameters; readonly average: Average },
): Forecaster {
  requireValues(method, series);
  const window = parameter(parameters, "window", method.name);
  const { values } = series;
  if (window > values.length) {
    throw new RangeError(`${method.name} requires a window of at most ${values.length}, got ${window}`);
  }
  const errors = values
    .slice(window)
    .map((value, index) => value - average(values.slice(index, index + window), window));
  return flatForecaster({
    values,
    parameters: { window },
    errors,
    // Looking back to before the window was full: the mean of what there was.
    levelAfter: (seen) => average(seen, Math.min(window, seen.length)),
    varianceGrowth: null,
  });
}

function meanSquare(errors: readonly number[]): number {
  return errors.reduce((sum, error) => sum + error * error, 0) / Math.max(1, errors.length);
}
