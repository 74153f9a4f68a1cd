import { discreteQuantile } from "#lib/statistics/discrete-quantile";
import { normalQuantile } from "#lib/statistics/normal-quantile";
import { poissonTails } from "#lib/statistics/poisson";
import { skewedQuantile } from "#lib/statistics/skewed-quantile";

/**
 * Poisson quantile: the least whole number that a Poisson demand does not exceed with this probability.
 *
 * @param probability between 0 and 1, both excluded
 * @param mean mean demand, 0 or more
 * @returns a whole number from 0, in the unit of the mean
 * @throws RangeError when the probability is not between 0 and 1 or the mean below 0 or not finite
 * @see definition of the quantile; moments of the Poisson distribution for the first guess (from memory; the
 * values are checked in the tests)
 * @example poissonQuantile(0.95, 5) // 9
 */
export function poissonQuantile(probability: number, mean: number): number {
  if (!(probability > 0 && probability < 1)) {
    throw new RangeError(`poissonQuantile requires a probability between 0 and 1, got ${probability}`);
  }
  if (!(mean >= 0 && Number.isFinite(mean))) {
    throw new RangeError(`poissonQuantile requires a mean of 0 or more, got ${mean}`);
  }
  if (mean === 0) return 0;
  const deviation = Math.sqrt(mean);
  const moments = { mean, deviation, skewness: 1 / deviation };
  // The guess aims at the middle of a whole number's share, half a count below the quantile's edge.
  const guess = skewedQuantile(moments, normalQuantile(probability)) - 0.5;
  return discreteQuantile(probability, Math.ceil(guess), (count) => poissonTails(count, mean));
}
