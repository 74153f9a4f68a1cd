import { normalCumulative } from "#lib/statistics/normal-cumulative";
import { normalDensity } from "#lib/statistics/normal-density";

/**
 * Second-order loss of the standard normal distribution, E[max(Z - z, 0)²] / 2: the area under the unit normal loss
 * from z on. What shortages cost when the stock is equally likely anywhere in a span.
 *
 * @param z standard deviations above the mean
 * @returns squared standard deviations
 * @throws RangeError when z is no finite number
 * @see H(z) = ((1 + z²)(1 - Phi(z)) - z phi(z)) / 2 (from memory; checked against integration in the tests)
 * @example unitNormalSecondLoss(0) // 0.25
 */
export function unitNormalSecondLoss(z: number): number {
  if (!Number.isFinite(z)) throw new RangeError(`unitNormalSecondLoss requires a finite number, got ${z}`);
  // Below the mean H(z) = (1 + z²) / 2 - H(-z); above it the last digits may cancel, but never below nothing.
  if (z < 0) return (1 + z * z) / 2 - unitNormalSecondLoss(-z);
  return Math.max(0, ((1 + z * z) * normalCumulative(-z) - z * normalDensity(z)) / 2);
}
