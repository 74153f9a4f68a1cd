import { negativeBinomialTails } from "#lib/statistics/negative-binomial";
import { negativeBinomialQuantile } from "#lib/statistics/negative-binomial-quantile";
import { poissonTails } from "#lib/statistics/poisson";
import { poissonQuantile } from "#lib/statistics/poisson-quantile";

/** Below it a negative binomial is a Poisson to all digits that matter. */
const LEAST_DISPERSION = 1e-9;

/**
 * The count that is not exceeded with a given chance: negative binomial with variance mean + k mean², Poisson
 * where k is 0.
 *
 * @param mean expected count, from 0
 * @param dispersion k, from 0
 * @param chance between 0 and 1, both excluded
 * @returns the least whole count whose chance of not being exceeded is at least that
 * @example countQuantile(2, 0, 0.95) // 5
 */
export function countQuantile(mean: number, dispersion: number, chance: number): number {
  return dispersion < LEAST_DISPERSION
    ? poissonQuantile(chance, mean)
    : negativeBinomialQuantile(chance, { mean, size: 1 / dispersion });
}

/**
 * Chance that a count is not exceeded; the distributions of `countQuantile`.
 *
 * @param mean expected count, from 0
 * @param dispersion k, from 0
 * @param count a whole number
 * @returns from 0 to 1
 * @example countUpTo(2, 0, 5) // 0.9834
 */
export function countUpTo(mean: number, dispersion: number, count: number): number {
  return dispersion < LEAST_DISPERSION
    ? poissonTails(count, mean).lower
    : negativeBinomialTails(count, { mean, size: 1 / dispersion }).lower;
}
