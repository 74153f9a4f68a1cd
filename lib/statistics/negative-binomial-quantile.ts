import { discreteQuantile } from "#lib/statistics/discrete-quantile";
import { type NegativeBinomial, negativeBinomialTails } from "#lib/statistics/negative-binomial";
import { normalQuantile } from "#lib/statistics/normal-quantile";
import { skewedQuantile } from "#lib/statistics/skewed-quantile";

/**
 * Negative binomial quantile: the least whole number that the demand does not exceed with this probability.
 *
 * @param probability between 0 and 1, both excluded
 * @param demand mean of 0 or more, size above 0, whole or not
 * @returns a whole number from 0, in the unit of the mean
 * @throws RangeError when the probability, the mean or the size is out of range
 * @see definition of the quantile; moments of the distribution for the first guess (from memory; the values
 * are checked in the tests)
 * @example negativeBinomialQuantile(0.95, { mean: 5, size: 1.5 }) // 14
 */
export function negativeBinomialQuantile(probability: number, demand: NegativeBinomial): number {
  if (!(probability > 0 && probability < 1)) {
    throw new RangeError(
      `negativeBinomialQuantile requires a probability between 0 and 1, got ${probability}`,
    );
  }
  const { mean, size } = demand;
  if (!(mean >= 0 && Number.isFinite(mean) && size > 0 && Number.isFinite(size))) {
    throw new RangeError(
      `negativeBinomialQuantile requires a mean of 0 or more and a size above 0, got ${mean} and ${size}`,
    );
  }
  if (mean === 0) return 0;
  const spread = mean / size;
  const deviation = Math.sqrt(mean * (1 + spread));
  const moments = { mean, deviation, skewness: (1 + 2 * spread) / deviation };
  const guess = skewedQuantile(moments, normalQuantile(probability)) - 0.5;
  return discreteQuantile(probability, Math.ceil(guess), (count) => negativeBinomialTails(count, demand));
}
