import type { Forecaster } from "#lib/forecast/methods/forecasting-method";

/** Looking back: what a method would have said, against what came. */
export type Backtest = {
  /** how many values had been seen at the first look */
  readonly firstOrigin: number;
  /** a row a look, oldest first; value less forecast one step ahead, two, ... as far as values reach */
  readonly errors: readonly (readonly number[])[];
};

/**
 * Backtest with a rolling origin: from each past week on, the forecast of the next weeks, made of what had
 * been seen by then; the parameters are those of the whole series.
 *
 * @param forecaster a method that has seen the series
 * @param values the series, oldest first
 * @param question how many values must have been seen at least, and how many steps to look ahead
 * @returns errors of each look
 * @see Tashman (2000), International Journal of Forecasting 16, "out-of-sample tests" (from memory)
 * @example backtest(forecaster, values, { firstOrigin: 13, steps: 3 })
 */
export function backtest(
  forecaster: Pick<Forecaster, "forecastAfter">,
  values: readonly number[],
  { firstOrigin, steps }: { readonly firstOrigin: number; readonly steps: number },
): Backtest {
  const errors: number[][] = [];
  for (let origin = firstOrigin; origin < values.length; origin += 1) {
    const ahead = Math.min(steps, values.length - origin);
    const forecast = forecaster.forecastAfter(origin, ahead);
    errors.push(forecast.map((value, step) => (values[origin + step] ?? 0) - value));
  }
  return { firstOrigin, errors };
}

/**
 * How far off a backtest's running totals were: the root of the mean over all looks and steps h of the
 * squared error of the sum of the first h steps, over h. What stock must last is a sum, and an error that
 * repeats itself week after week weighs more in it than one that evens out.
 *
 * @param looked a backtest
 * @returns in the unit of the series; null without a look
 */
export function runningTotalLoss(looked: Backtest): number | null {
  let sum = 0;
  let count = 0;
  for (const look of looked.errors) {
    let total = 0;
    for (const [step, error] of look.entries()) {
      total += error;
      sum += (total * total) / (step + 1);
      count += 1;
    }
  }
  return count === 0 ? null : Math.sqrt(sum / count);
}
