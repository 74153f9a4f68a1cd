/**
 * Root mean square: the size of a typical error, a steady lean to one side included.
 *
 * sqrt(sum of squares / count)
 *
 * @param values any unit
 * @returns in the unit of the values
 * @throws RangeError when there is no value
 * @example rootMeanSquare([3, -4]) // 3.5355339059327378
 */
export function rootMeanSquare(values: readonly number[]): number {
  if (values.length === 0) {
    throw new RangeError("rootMeanSquare requires at least 1 value, got 0");
  }
  return Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
}
