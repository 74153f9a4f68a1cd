import { normalCumulative } from "#lib/statistics/normal-cumulative";
import { normalDensity } from "#lib/statistics/normal-density";

/**
 * Unit normal loss: by how much a normal demand with mean 0 and standard deviation 1 exceeds z on average,
 * E[max(Z - z, 0)]. Times the standard deviation it is the expected shortage.
 *
 * @param z standard deviations above the mean
 * @returns the mean excess, in standard deviations
 * @throws RangeError when z is no finite number
 * @see G(z) = phi(z) - z (1 - Phi(z)) (from memory; the values are checked in the tests)
 * @example unitNormalLoss(1) // 0.08331547058768628
 */
export function unitNormalLoss(z: number): number {
  if (!Number.isFinite(z)) throw new RangeError(`unitNormalLoss requires a finite number, got ${z}`);
  // Below the mean G(z) = G(-z) - z; above it the last digits may cancel, but never below nothing.
  if (z < 0) return unitNormalLoss(-z) - z;
  return Math.max(0, normalDensity(z) - z * normalCumulative(-z));
}
