import type { Tails } from "#lib/statistics/tails";

/** Share of a probability that rounding may take from a distribution function. */
const ROUNDING = 1e-13;

/**
 * Quantile of a distribution on 0, 1, 2, ...: the least whole number whose distribution function reaches the
 * probability. From the guess it steps 1, 2, 4, ... until the quantile lies between, then halves. Where the
 * function meets the probability but for rounding (a share of 1e-13), it counts as reached.
 *
 * @param probability between 0 and 1, both excluded
 * @param guess where the search starts
 * @param tails the share up to, and above, a whole number
 * @returns the quantile, a whole number from 0
 * @throws RangeError when the probability is not between 0 and 1 or the guess is not finite
 * @see definition of the quantile, bisection (from memory)
 * @example discreteQuantile(0.9, 3, (k) => ({ lower: 1 - 0.5 ** (k + 1), upper: 0.5 ** (k + 1) })) // 3
 */
export function discreteQuantile(
  probability: number,
  guess: number,
  tails: (count: number) => Tails,
): number {
  if (!(probability > 0 && probability < 1)) {
    throw new RangeError(`discreteQuantile requires a probability between 0 and 1, got ${probability}`);
  }
  if (!Number.isFinite(guess)) throw new RangeError(`discreteQuantile requires a finite guess, got ${guess}`);
  const isReached = (count: number): boolean => reaches(tails(count), probability);
  let [low, high] = bracket(Math.max(0, Math.round(guess)), isReached);
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (isReached(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/** A number not reached, and a later one that is; -1 is never reached. */
function bracket(start: number, isReached: (count: number) => boolean): [number, number] {
  let step = 1;
  if (!isReached(start)) {
    let low = start;
    for (; !isReached(low + step); step *= 2) low += step;
    return [low, low + step];
  }
  let high = start;
  for (; high > 0 && isReached(Math.max(0, high - step)); step *= 2) high = Math.max(0, high - step);
  return [Math.max(-1, high - step), high];
}

/** Compares the smaller tail, which keeps its digits; 1 - probability is only as good as a double near 1. */
function reaches({ lower, upper }: Tails, probability: number): boolean {
  if (probability <= 0.5) return lower >= probability * (1 - ROUNDING);
  return upper <= (1 - probability) * (1 + ROUNDING) + Number.EPSILON / 2;
}
