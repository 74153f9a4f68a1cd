import { bestSearch } from "#lib/forecast/methods/best-search";
import { flatForecaster } from "#lib/forecast/methods/flat-forecaster";
import {
  type Forecaster,
  type ForecastingMethod,
  parameter,
  requireValues,
  type Series,
} from "#lib/forecast/methods/forecasting-method";

const BOUNDS = [0.01, 0.5] as const;
const STARTS = [[0.1], [0.3]];

/**
 * Croston's method for use that comes now and then: size and interval of the uses are smoothed apart, when
 * there is one.
 *
 * @see Croston (1972), Operational Research Quarterly 23 (from memory)
 * @example croston.fixed({ values: [0, 4, 0, 4], seasonLength: 1 }, { alpha: 0.1 }).forecast(1) // [2]
 */
export const croston = crostonMethod("size over interval", () => 1);

/**
 * Croston's method less its bias, by Syntetos and Boylan: times (1 - alpha / 2).
 *
 * @see Syntetos and Boylan (2005), International Journal of Forecasting 21 (from memory)
 * @example syntetosBoylan.fixed({ values: [0, 4, 0, 4], seasonLength: 1 }, { alpha: 0.1 }).forecast(1) // [1.9]
 */
export const syntetosBoylan = crostonMethod("size over interval, less its bias", (alpha) => 1 - alpha / 2);

function crostonMethod(name: string, factorOf: (alpha: number) => number): ForecastingMethod {
  const method: ForecastingMethod = {
    name,
    freedom: () => 1,
    fewestValues: () => 1,
    fixed: (series, parameters) => {
      requireValues(method, series);
      return crostonForecaster(series, parameter(parameters, "alpha", name), factorOf);
    },
    fitted: (series) => {
      requireValues(method, series);
      return crostonForecaster(series, bestAlpha(series, factorOf), factorOf);
    },
  };
  return method;
}

function bestAlpha(series: Series, factorOf: (alpha: number) => number): number {
  const residuals = ([alpha = 0]: readonly number[]) =>
    smoothedUses(series.values, alpha, factorOf(alpha)).errors;
  return bestSearch({ residuals, bounds: [BOUNDS] }, STARTS).parameters[0] ?? 0;
}

function crostonForecaster(series: Series, alpha: number, factorOf: (alpha: number) => number): Forecaster {
  const { values } = series;
  const factor = factorOf(alpha);
  return flatForecaster({
    values,
    parameters: { alpha },
    errors: smoothedUses(values, alpha, factor).errors,
    levelAfter: (seen) => smoothedUses(seen, alpha, factor).rate,
    varianceGrowth: null,
  });
}

/** Use a step after the newest value, and the errors of what was said before each but the first. */
function smoothedUses(
  values: readonly number[],
  alpha: number,
  factor: number,
): { readonly rate: number; readonly errors: number[] } {
  const errors: number[] = [];
  let size = 0;
  let interval = 0;
  let since = 1;
  let rate = 0;
  for (const [index, value] of values.entries()) {
    if (index > 0) errors.push(value - rate);
    if (value === 0) {
      since += 1;
      continue;
    }
    const isFirst = interval === 0;
    size = isFirst ? value : size + alpha * (value - size);
    interval = isFirst ? since : interval + alpha * (since - interval);
    rate = (factor * size) / interval;
    since = 1;
  }
  return { rate, errors };
}
