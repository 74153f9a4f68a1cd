import { deviance } from "#lib/statistics/deviance";
import { logGamma, stirlingRemainder } from "#lib/statistics/log-gamma";

const SADDLE_POINT_FROM = 10;

/**
 * mean^x e^-mean / Gamma(x + 1): the Poisson probability, for any x from 0, whole or not. It is also the
 * factor before the series of the incomplete gamma function.
 *
 * @param x from 0
 * @param mean above 0
 * @returns the weight, 0 to 1
 * @throws RangeError when x is below 0, the mean not above 0, or one of them not finite
 * @see C. Loader (2000), Fast and accurate computation of binomial probabilities: the saddle-point form
 * exp(-remainder(x) - deviance(x, mean)) / sqrt(2 pi x) (from memory)
 * @example poissonWeight(2, 1) // 0.18393972058572117, which is 1 / (2 e)
 */
export function poissonWeight(x: number, mean: number): number {
  if (!(x >= 0 && mean > 0 && Number.isFinite(x) && Number.isFinite(mean))) {
    throw new RangeError(`poissonWeight requires x from 0 and a mean above 0, got ${x} and ${mean}`);
  }
  if (x === 0) return Math.exp(-mean);
  if (x < SADDLE_POINT_FROM) return Math.exp(x * Math.log(mean) - mean - logGamma(x + 1));
  return Math.exp(-stirlingRemainder(x) - deviance(x, mean)) / Math.sqrt(2 * Math.PI * x);
}
