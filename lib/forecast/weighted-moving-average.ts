/**
 * Weighted moving average: as the simple one, with weights that rise evenly from 1 for the oldest
 * week of the window to `window` for the newest.
 *
 * (1 y[n-window+1] + 2 y[n-window+2] + ... + window y[n]) / (1 + 2 + ... + window)
 *
 * @param values use a week, oldest first, any unit
 * @param window how many of the newest weeks to average, a whole number from 1
 * @returns expected use a week, in the unit of the values, not rounded
 * @throws RangeError when there are fewer values than the window
 * @example weightedMovingAverage([90, 10, 20, 30], 3) // 23.333333333333332
 */
export function weightedMovingAverage(values: readonly number[], window: number): number {
  if (!Number.isSafeInteger(window) || window < 1 || window > values.length) {
    throw new RangeError(
      `weightedMovingAverage requires a window of 1 to ${values.length} weeks, got ${window}`,
    );
  }
  const newest = values.slice(values.length - window);
  const weighted = newest.reduce((sum, value, index) => sum + value * (index + 1), 0);
  return weighted / ((window * (window + 1)) / 2);
}
