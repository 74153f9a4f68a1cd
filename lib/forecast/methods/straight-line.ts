/** A straight line through values: its height one step before the first, and its rise a step. */
export type StraightLine = { readonly level: number; readonly slope: number };

/**
 * The straight line with the least squared distance from values one step apart; flat for a single value.
 *
 * @param values oldest first, at least one
 * @returns height before the first value, in the unit of the values, and slope a step
 * @throws RangeError when there is no value
 * @example straightLine([10, 12, 14]) // { level: 8, slope: 2 }
 */
export function straightLine(values: readonly number[]): StraightLine {
  if (values.length === 0) throw new RangeError("straightLine requires a value, got none");
  const middle = (values.length + 1) / 2;
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const spread = values.reduce((sum, _, index) => sum + (index + 1 - middle) ** 2, 0);
  const tilt = values.reduce((sum, value, index) => sum + (index + 1 - middle) * value, 0);
  const slope = spread === 0 ? 0 : tilt / spread;
  return { level: mean - slope * middle, slope };
}
