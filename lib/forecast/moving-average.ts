/**
 * Simple moving average: the forecast for each coming week is the mean of the last weeks.
 *
 * (y[n-window+1] + ... + y[n]) / window
 *
 * @param values use a week, oldest first, any unit
 * @param window how many of the newest weeks to average, a whole number from 1
 * @returns expected use a week, in the unit of the values, not rounded
 * @throws RangeError when there are fewer values than the window
 * @example movingAverage([90, 10, 20, 30], 3) // 20
 */
export function movingAverage(values: readonly number[], window: number): number {
  if (!Number.isSafeInteger(window) || window < 1 || window > values.length) {
    throw new RangeError(`movingAverage requires a window of 1 to ${values.length} weeks, got ${window}`);
  }
  return values.slice(values.length - window).reduce((sum, value) => sum + value, 0) / window;
}
