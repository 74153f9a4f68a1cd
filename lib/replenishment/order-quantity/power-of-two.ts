/** Rounding must not turn a tie into the longer interval. */
const NEARLY = 1e-12;

/**
 * The interval of 1, 2, 4, 8, ... periods nearest in cost to the best interval: a rhythm that is easy to keep, and at
 * most 6.07 % dearer in ordering and holding where the best interval is not below one period.
 *
 * @param interval the best interval between orders, in periods, from 0
 * @returns periods, a power of two from 1; between equals the shorter
 * @throws RangeError when the interval is below 0 or not finite
 * @see Muckstadt and Sapra (2010), Principles of Inventory Management, power-of-two policies: the least m with
 * interval <= sqrt(2) 2^m (from memory); published values in tests/reference
 * @example powerOfTwo(12.16) // 16
 */
export function powerOfTwo(interval: number): number {
  if (!(interval >= 0 && Number.isFinite(interval))) {
    throw new RangeError(`powerOfTwo requires an interval from 0, got ${interval}`);
  }
  let periods = 1;
  while (interval * (1 - NEARLY) > Math.SQRT2 * periods) periods *= 2;
  return periods;
}

/**
 * How much dearer than the best an interval (or a lot) is in ordering and holding.
 *
 * (ratio + 1 / ratio) / 2
 *
 * @param ratio the interval or lot as a multiple of the best one, above 0
 * @returns its cost as a multiple of the least, from 1
 * @throws RangeError when the ratio is not above 0
 * @see follows from the cost of an even use (worked out); published values in tests/reference
 * @example costRatio(1.5) // 1.0833
 */
export function costRatio(ratio: number): number {
  if (!(ratio > 0)) throw new RangeError(`costRatio requires a ratio above 0, got ${ratio}`);
  return (ratio + 1 / ratio) / 2;
}
