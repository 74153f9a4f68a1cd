/**
 * Quantile of a skewed distribution from its first three moments, by the Wilson-Hilferty cube. A first guess
 * for a search, not an answer: exact for no distribution, close for those near the gamma.
 *
 * @param moments mean, standard deviation and skewness (0 or more)
 * @param z normal quantile of the probability
 * @returns the guess, in the unit of the mean
 * @throws RangeError when a moment is negative or not finite
 * @see E. B. Wilson and M. M. Hilferty (1931), The distribution of chi-square, for three moments (from
 * memory)
 * @example skewedQuantile({ mean: 9, deviation: 3, skewness: 1 / 3 }, 1.2815515655446) // 12.934186575879723
 */
export function skewedQuantile(
  moments: { readonly mean: number; readonly deviation: number; readonly skewness: number },
  z: number,
): number {
  const { mean, deviation, skewness } = moments;
  if (![mean, deviation, skewness].every((moment) => moment >= 0 && Number.isFinite(moment))) {
    throw new RangeError(`skewedQuantile requires moments from 0, got ${mean}, ${deviation}, ${skewness}`);
  }
  if (skewness < 1e-6) return mean + deviation * z;
  const root = Math.max(0, 1 + (skewness * z) / 6 - (skewness * skewness) / 36);
  return mean + (deviation * 2 * (root ** 3 - 1)) / skewness;
}
