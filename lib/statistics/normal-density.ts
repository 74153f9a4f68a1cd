const ONE_OVER_ROOT_TWO_PI = 0.3989422804014327;

/**
 * Density of the normal distribution with mean 0 and standard deviation 1.
 *
 * @param z standard deviations above the mean
 * @returns the density a standard deviation
 * @throws RangeError when z is not a number
 * @see phi(z) = exp(-z^2 / 2) / sqrt(2 pi) (from memory; the values are checked in the tests)
 * @example normalDensity(1) // 0.24197072451914337
 */
export function normalDensity(z: number): number {
  if (Number.isNaN(z)) throw new RangeError(`normalDensity requires a number, got ${z}`);
  return ONE_OVER_ROOT_TWO_PI * Math.exp((-z * z) / 2);
}
