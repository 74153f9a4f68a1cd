import { countQuantile, countUpTo } from "#lib/forecast/count-quantile";
import { gammaTails } from "#lib/statistics/gamma";
import { gammaQuantile } from "#lib/statistics/gamma-quantile";

/** How far the sum of the coming weeks can be from what is expected: variance = perUse * mean + k * mean². */
export type SumSpread = {
  /** what one use takes, as a rule: uses come whole, so a small sum is uneven; in the unit of the series */
  readonly perUse: number;
  /** k for the sum of 1, 2, 3, ... weeks: how far past forecasts of such sums were off, beyond that */
  readonly dispersions: readonly number[];
  /** whether the sum is a count of whole pieces */
  readonly whole: boolean;
};

/** Of a millionth of a piece nothing comes, whatever the chance. */
const LEAST_MEAN = 1e-6;
/** A smaller squared variation is no spread to any digit that matters. */
const LEAST_SPREAD = 1e-9;

/** Rounding of sevenths of a week. */
const NEARLY = 1e-9;

/** A sum that is asked about. */
export type ExpectedSum = {
  /** expected, from 0 */
  readonly mean: number;
  /** over how many weeks, above 0; may be a fraction */
  readonly weeks: number;
};

/**
 * Variance of a sum over the coming weeks.
 *
 * @param spread how far sums can be off
 * @param sum what is expected, over how many weeks; between whole weeks k is interpolated
 * @returns in the squared unit of the series
 * @see Cameron and Trivedi (1998), Regression Analysis of Count Data, negative binomial variance (NB2) (from memory)
 * @example sumVariance({ perUse: 1, dispersions: [0.1], whole: true }, { mean: 10, weeks: 1 }) // 20
 */
export function sumVariance(spread: SumSpread, { mean, weeks }: ExpectedSum): number {
  return spread.perUse * mean + dispersionOver(spread.dispersions, weeks) * mean * mean;
}

/**
 * The sum over the coming weeks that is not exceeded with a given chance, never below 0: a negative binomial for
 * whole pieces, a gamma distribution of the same mean and variance for amounts.
 *
 * @param spread how far sums can be off
 * @param sum what is expected, over how many weeks
 * @param chance between 0 and 1, both excluded
 * @returns in the unit of the series
 * @throws RangeError when the chance is out of range
 * @example sumQuantile({ perUse: 1, dispersions: [0], whole: true }, { mean: 2, weeks: 1 }, 0.95) // 5
 */
export function sumQuantile(spread: SumSpread, sum: ExpectedSum, chance: number): number {
  const { mean } = sum;
  if (mean < LEAST_MEAN) return 0;
  const variance = sumVariance(spread, sum);
  if (spread.whole) return countQuantile(mean, Math.max(0, (variance - mean) / (mean * mean)), chance);
  if (variance <= LEAST_SPREAD * mean * mean) return mean;
  return gammaQuantile(chance, { shape: (mean * mean) / variance, scale: variance / mean });
}

/**
 * Chance that the sum over the coming weeks does not exceed an amount; the distributions of `sumQuantile`.
 *
 * @param spread how far sums can be off
 * @param sum what is expected, over how many weeks
 * @param amount in the unit of the series
 * @returns from 0 to 1
 * @example sumUpTo({ perUse: 1, dispersions: [0], whole: true }, { mean: 2, weeks: 1 }, 5) // 0.9834
 */
export function sumUpTo(spread: SumSpread, sum: ExpectedSum, amount: number): number {
  if (amount < 0) return 0;
  const { mean } = sum;
  if (mean < LEAST_MEAN) return 1;
  const variance = sumVariance(spread, sum);
  if (spread.whole)
    return countUpTo(mean, Math.max(0, (variance - mean) / (mean * mean)), Math.floor(amount + NEARLY));
  if (variance <= LEAST_SPREAD * mean * mean) return amount >= mean - NEARLY ? 1 : 0;
  return gammaTails(amount, { shape: (mean * mean) / variance, scale: variance / mean }).lower;
}

/**
 * k for a sum over some weeks: between whole weeks in proportion, from the last known one on the same.
 *
 * @param dispersions k for sums of 1, 2, 3, ... weeks
 * @param weeks above 0; may be a fraction
 * @example dispersionOver([0.3, 0.2], 1.5) // 0.25
 */
export function dispersionOver(dispersions: readonly number[], weeks: number): number {
  const last = dispersions.at(-1) ?? 0;
  if (weeks <= 1) return dispersions[0] ?? 0;
  const below = Math.floor(weeks);
  const from = dispersions[below - 1] ?? last;
  const to = dispersions[below] ?? last;
  return from + (weeks - below) * (to - from);
}
