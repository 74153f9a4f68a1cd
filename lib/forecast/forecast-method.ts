import { movingAverage } from "#lib/forecast/moving-average";
import { weightedMovingAverage } from "#lib/forecast/weighted-moving-average";

/** A way to say how much will be used a week, from the weeks before. */
export type ForecastMethod = {
  readonly kind: "simple" | "weighted";
  /** how many of the newest weeks it looks at */
  readonly window: number;
};

/**
 * Forecast of one method: the expected use in each coming week.
 *
 * @param method which average, over how many weeks
 * @param values use a week, oldest first, any unit
 * @returns expected use a week, in the unit of the values
 * @throws RangeError when there are fewer values than the method's window
 * @example methodForecast({ kind: "simple", window: 2 }, [90, 10, 20]) // 15
 */
export function methodForecast(method: ForecastMethod, values: readonly number[]): number {
  return method.kind === "simple"
    ? movingAverage(values, method.window)
    : weightedMovingAverage(values, method.window);
}
