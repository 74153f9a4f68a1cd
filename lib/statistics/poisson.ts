import { incompleteGamma } from "#lib/statistics/incomplete-gamma";
import { poissonWeight } from "#lib/statistics/poisson-weight";
import type { Tails } from "#lib/statistics/tails";

/**
 * Poisson probability: the chance of exactly `count` when `mean` are expected.
 *
 * @param count a whole number; below 0 the chance is 0
 * @param mean 0 or more
 * @returns the chance, 0 to 1
 * @throws RangeError when the count is not whole or the mean below 0 or not finite
 * @see p(k) = mean^k e^-mean / k! (from memory; the values are checked in the tests)
 * @example poissonProbability(0, 2) // 0.1353352832366127
 */
export function poissonProbability(count: number, mean: number): number {
  check("poissonProbability", count, mean);
  if (count < 0) return 0;
  if (mean === 0) return count === 0 ? 1 : 0;
  return poissonWeight(count, mean);
}

/**
 * Poisson distribution function and its complement: the chance of at most, and of more than, `count`.
 *
 * @param count a whole number; below 0 all lies above
 * @param mean 0 or more
 * @returns the two chances
 * @throws RangeError when the count is not whole or the mean below 0 or not finite
 * @see P(X <= k) = Q(k + 1, mean) of the incomplete gamma function, Digital Library of Mathematical
 * Functions 8.4.10 (from memory; the values are checked in the tests)
 * @example poissonTails(1, 2).lower // 0.406005849709838
 */
export function poissonTails(count: number, mean: number): Tails {
  check("poissonTails", count, mean);
  if (count < 0) return { lower: 0, upper: 1 };
  const { lower, upper } = incompleteGamma(count + 1, mean);
  return { lower: upper, upper: lower };
}

/**
 * Expected shortage of a stock of `count` against a Poisson demand, E[max(X - count, 0)].
 *
 * @param count the stock, a whole number
 * @param mean mean demand, 0 or more, in the unit of the count
 * @returns mean demand beyond the stock, in the same unit
 * @throws RangeError when the count is not whole or the mean below 0 or not finite
 * @see (mean - k) P(X > k) + mean p(k) (from memory; the values are checked in the tests)
 * @example poissonExpectedShortage(1, 2) // 1.1353352832366127
 */
export function poissonExpectedShortage(count: number, mean: number): number {
  check("poissonExpectedShortage", count, mean);
  if (count <= 0) return mean - count;
  const beyond = (mean - count) * poissonTails(count, mean).upper + mean * poissonProbability(count, mean);
  return Math.max(0, beyond);
}

function check(name: string, count: number, mean: number): void {
  if (!Number.isSafeInteger(count)) throw new RangeError(`${name} requires a whole count, got ${count}`);
  if (!(mean >= 0 && Number.isFinite(mean))) {
    throw new RangeError(`${name} requires a mean of 0 or more, got ${mean}`);
  }
}
