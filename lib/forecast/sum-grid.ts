import { type ExpectedSum, type SumSpread, sumVariance } from "#lib/forecast/sum-spread";
import { gammaTails } from "#lib/statistics/gamma";
import { type GridDistribution, gridOf } from "#lib/statistics/grid-distribution";
import { logGamma } from "#lib/statistics/log-gamma";

/** Deviations beyond the mean that a grid reaches, more of a lumpy sum: less than 1 in 100,000 lies beyond. */
const DEVIATIONS = 6;
const LUMPY_DEVIATIONS = 12;
/** Of a millionth of a piece nothing comes, whatever the chance. */
const LEAST_MEAN = 1e-6;
/** A smaller squared variation is no spread to any digit that matters. */
const LEAST_SPREAD = 1e-9;

/**
 * How far a grid must reach to hold a sum.
 *
 * @param spread how far sums can be off
 * @param sum what is expected, over how many weeks
 * @returns in the unit of the series
 * @example sumReach({ perUse: 1, dispersions: [0], whole: true }, { mean: 4, weeks: 1 }) // 22
 */
export function sumReach(spread: SumSpread, sum: ExpectedSum): number {
  const deviation = Math.sqrt(sumVariance(spread, sum));
  const lumpiness = Math.min(1, deviation / Math.max(LEAST_MEAN, sum.mean));
  return sum.mean + (DEVIATIONS + (LUMPY_DEVIATIONS - DEVIATIONS) * lumpiness) * deviation;
}

/**
 * Distribution of a sum over the coming weeks on a grid: a negative binomial for whole pieces where a step is a
 * piece, else a gamma distribution of the same mean and variance, each amount put to the nearest step.
 *
 * @param spread how far sums can be off
 * @param sum what is expected, over how many weeks
 * @param step in the unit of the series, above 0
 * @see `sumQuantile`, whose distributions these are
 * @example sumGrid({ perUse: 1, dispersions: [0], whole: true }, { mean: 2, weeks: 1 }, 1).chances[0] // 0.1353
 */
export function sumGrid(spread: SumSpread, sum: ExpectedSum, step: number): GridDistribution {
  const { mean } = sum;
  if (mean < LEAST_MEAN) return gridOf(step, [1]);
  const variance = sumVariance(spread, sum);
  const steps = Math.ceil(sumReach(spread, sum) / step) + 1;
  if (spread.whole && step === 1) {
    return gridOf(1, wholeChances(mean, Math.max(0, (variance - mean) / (mean * mean)), steps));
  }
  if (variance <= LEAST_SPREAD * mean * mean) return sureAmount(mean, step);
  return gridOf(step, gammaWeights({ shape: (mean * mean) / variance, scale: variance / mean }, step, steps));
}

/** Between two steps, each by how near it is, so that the mean stays. */
function sureAmount(mean: number, step: number): GridDistribution {
  const below = Math.floor(mean / step);
  const weights = new Float64Array(below + 2);
  weights[below + 1] = mean / step - below;
  weights[below] = 1 - (mean / step - below);
  return gridOf(step, weights);
}

/** Poisson where k is 0: each chance from the one before. */
function wholeChances(mean: number, k: number, steps: number): Float64Array {
  const logarithms = new Float64Array(steps);
  logarithms[0] = k < LEAST_SPREAD ? -mean : -Math.log1p(k * mean) / k;
  const ratio = (count: number) => (mean * (1 + k * (count - 1))) / (count * (1 + k * mean));
  for (let count = 1; count < steps; count += 1) {
    logarithms[count] = (logarithms[count - 1] ?? 0) + Math.log(ratio(count));
  }
  return logarithms.map(Math.exp);
}

/** Weight of the amounts nearest to each step; the density there, but for the first cell, where it may be infinite. */
function gammaWeights(
  gamma: { readonly shape: number; readonly scale: number },
  step: number,
  steps: number,
): Float64Array {
  const { shape, scale } = gamma;
  const weights = new Float64Array(steps);
  const constant = Math.log(step) - shape * Math.log(scale) - logGamma(shape);
  weights[0] = gammaTails(step / 2, gamma).lower;
  for (let at = 1; at < steps; at += 1) {
    const amount = at * step;
    weights[at] = Math.exp(constant + (shape - 1) * Math.log(amount) - amount / scale);
  }
  return weights;
}
