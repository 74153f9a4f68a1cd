import { type ForecastMethod, methodForecast } from "#lib/forecast/forecast-method";

/** What a backtest of one method is asked. */
export type ProtectionErrorQuestion = {
  /** use a week, oldest first, any unit */
  readonly values: readonly number[];
  readonly method: ForecastMethod;
  /** weeks of use to forecast as one sum, above 0; may be a fraction */
  readonly horizonWeeks: number;
  /** the fewest weeks a forecast may have seen, at least the method's window */
  readonly firstOrigin: number;
};

/**
 * Errors of the forecast of a sum: from each past week on, what the method would have said for the
 * whole protection interval, less what was then used in it. A last part week counts in proportion.
 *
 * forecast(y[1..i]) * horizon - (y[i+1] + ... ), for i = firstOrigin, firstOrigin + 1, ...
 *
 * @param question the weeks, the method, the length of the interval and where to start
 * @returns errors oldest first, in the unit of the values, above 0 where too much was forecast; none
 * when the history is too short
 * @throws RangeError when the horizon is not above 0 or the start lies before the method's window
 * @see Hyndman and Athanasopoulos, Forecasting: Principles and Practice, "time series
 * cross-validation" (from memory)
 * @example protectionErrors({ values: [10, 10, 20, 30], method: { kind: "simple", window: 2 },
 *   horizonWeeks: 1.5, firstOrigin: 2 }) // [-20]
 */
export function protectionErrors(question: ProtectionErrorQuestion): number[] {
  const { values, method, horizonWeeks, firstOrigin } = question;
  if (!(horizonWeeks > 0)) {
    throw new RangeError(`protectionErrors requires a horizon above 0 weeks, got ${horizonWeeks}`);
  }
  if (firstOrigin < method.window) {
    throw new RangeError(`protectionErrors requires a start from ${method.window} weeks, got ${firstOrigin}`);
  }
  const errors: number[] = [];
  for (let origin = firstOrigin; origin + Math.ceil(horizonWeeks) <= values.length; origin += 1) {
    const seen = values.slice(origin - method.window, origin);
    errors.push(methodForecast(method, seen) * horizonWeeks - sumOver(values, origin, horizonWeeks));
  }
  return errors;
}

function sumOver(values: readonly number[], from: number, weeks: number): number {
  const whole = Math.floor(weeks);
  const full = values.slice(from, from + whole).reduce((sum, value) => sum + value, 0);
  return full + (weeks - whole) * (values[from + whole] ?? 0);
}
