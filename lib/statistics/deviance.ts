const NEAR = 0.1;

/**
 * Deviance of a count from its mean, x ln(x / mean) + mean - x, without the loss of digits where the two
 * are close: there ln is expanded in v = (x - mean) / (x + mean).
 *
 * @param x count, above 0
 * @param mean above 0
 * @returns the deviance, 0 where x is the mean
 * @throws RangeError when one of the two is not above 0 or not finite
 * @see C. Loader (2000), Fast and accurate computation of binomial probabilities (from memory)
 * @example deviance(2, 1) // 0.3862943611198906, which is 2 ln 2 - 1
 */
export function deviance(x: number, mean: number): number {
  if (!(x > 0 && mean > 0 && Number.isFinite(x) && Number.isFinite(mean))) {
    throw new RangeError(`deviance requires a count and a mean above 0, got ${x} and ${mean}`);
  }
  const gap = x - mean;
  if (Math.abs(gap) >= NEAR * (x + mean)) return x * Math.log(x / mean) - gap;
  const v = gap / (x + mean);
  let sum = gap * v;
  let power = 2 * x * v;
  for (let odd = 3; ; odd += 2) {
    power *= v * v;
    const next = sum + power / odd;
    if (next === sum) return sum;
    sum = next;
  }
}
