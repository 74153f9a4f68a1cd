import { binomialWeight, incompleteBeta } from "#lib/statistics/incomplete-beta";
import type { Tails } from "#lib/statistics/tails";

/** A negative binomial demand: its mean, and a size that makes the variance mean + mean^2 / size. */
export type NegativeBinomial = { readonly mean: number; readonly size: number };

/**
 * Negative binomial probability: the chance of exactly `count`.
 *
 * @param count a whole number; below 0 the chance is 0
 * @param demand mean of 0 or more, size above 0, whole or not
 * @returns the chance, 0 to 1
 * @throws RangeError when the count is not whole, or the mean or the size is out of range
 * @see Gamma(k + size) / (Gamma(size) k!) p^size (1 - p)^k with p = size / (size + mean) (from memory; the
 * values are checked in the tests)
 * @example negativeBinomialProbability(0, { mean: 2, size: 2 }) // 0.25
 */
export function negativeBinomialProbability(count: number, demand: NegativeBinomial): number {
  check("negativeBinomialProbability", count, demand);
  const { mean, size } = demand;
  if (count < 0) return 0;
  if (mean === 0) return count === 0 ? 1 : 0;
  if (count === 0) return Math.exp(-size * Math.log1p(mean / size));
  const { success, failure } = chances(demand);
  return (size / (size + count)) * binomialWeight(size, count, success, failure);
}

/**
 * Negative binomial distribution function and its complement: the chance of at most, and of more than,
 * `count`.
 *
 * @param count a whole number; below 0 all lies above
 * @param demand mean of 0 or more, size above 0, whole or not
 * @returns the two chances
 * @throws RangeError when the count is not whole, or the mean or the size is out of range
 * @see P(X <= k) = I(p; size, k + 1) of the incomplete beta function, Abramowitz and Stegun (1964) 26.5.26
 * (from memory; the values are checked in the tests)
 * @example negativeBinomialTails(1, { mean: 2, size: 2 }).lower // 0.5
 */
export function negativeBinomialTails(count: number, demand: NegativeBinomial): Tails {
  check("negativeBinomialTails", count, demand);
  if (count < 0) return { lower: 0, upper: 1 };
  const { success, failure } = chances(demand);
  return incompleteBeta(demand.size, count + 1, success, failure);
}

/**
 * Expected shortage of a stock of `count` against a negative binomial demand, E[max(X - count, 0)].
 *
 * @param count the stock, a whole number
 * @param demand mean of 0 or more, size above 0, whole or not
 * @returns mean demand beyond the stock, in the unit of the mean
 * @throws RangeError when the count is not whole, or the mean or the size is out of range
 * @see (mean - k) P(X > k) + (k + size) (mean / size) p(k) (from memory; the values are checked in the
 * tests)
 * @example negativeBinomialExpectedShortage(1, { mean: 2, size: 2 }) // 1.25
 */
export function negativeBinomialExpectedShortage(count: number, demand: NegativeBinomial): number {
  check("negativeBinomialExpectedShortage", count, demand);
  const { mean, size } = demand;
  if (count <= 0) return mean - count;
  const exactly = (count / size + 1) * mean * negativeBinomialProbability(count, demand);
  return Math.max(0, (mean - count) * negativeBinomialTails(count, demand).upper + exactly);
}

/** p and 1 - p; each from its own quotient, as the smaller one has no digits left in 1 less the other. */
function chances({ mean, size }: NegativeBinomial): { success: number; failure: number } {
  return { success: 1 / (1 + mean / size), failure: mean / (size + mean) };
}

function check(name: string, count: number, { mean, size }: NegativeBinomial): void {
  if (!Number.isSafeInteger(count)) throw new RangeError(`${name} requires a whole count, got ${count}`);
  if (!(mean >= 0 && Number.isFinite(mean))) {
    throw new RangeError(`${name} requires a mean of 0 or more, got ${mean}`);
  }
  if (!(size > 0 && Number.isFinite(size))) {
    throw new RangeError(`${name} requires a size above 0, got ${size}`);
  }
}
