import { incompleteBeta } from "#lib/statistics/incomplete-beta";

const HALVINGS = 60;

/** Least and most that a share may be. */
type ShareInterval = { readonly low: number; readonly high: number };

/**
 * Interval for a share of which some of a number of trials were seen: all shares under which neither so few nor so many
 * would be rarer than half of what the level leaves (Clopper and Pearson). It covers at least the level, however few the
 * trials are.
 *
 * @param seen times it came, whole, from 0 to `trials`
 * @param trials whole number from 0; with none, every share is possible
 * @param level share of such intervals that hold the true share, between 0 and 1
 * @returns least and most, from 0 to 1
 * @throws RangeError when the counts or the level are out of range
 * @see Clopper and Pearson (1934), The use of confidence or fiducial limits, Biometrika 26 (from memory; the values are
 * checked in the tests)
 * @example binomialInterval(9, 10, 0.9) // { low: 0.6058, high: 0.9949 }
 */
export function binomialInterval(seen: number, trials: number, level: number): ShareInterval {
  const isCount = Number.isSafeInteger(seen) && Number.isSafeInteger(trials) && seen >= 0 && seen <= trials;
  if (!isCount || !(level > 0 && level < 1)) {
    throw new RangeError(
      `binomialInterval requires whole counts and a level below 1, got ${seen} of ${trials} at ${level}`,
    );
  }
  const tail = (1 - level) / 2;
  return {
    low: seen === 0 ? 0 : shareAt(tail, seen, trials - seen + 1),
    high: seen === trials ? 1 : shareAt(1 - tail, seen + 1, trials - seen),
  };
}

/** The x at which I(x; a, b) reaches the probability, by halving. */
function shareAt(probability: number, a: number, b: number): number {
  let [low, high] = [0, 1];
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (low + high) / 2;
    if (incompleteBeta(a, b, middle).lower < probability) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
