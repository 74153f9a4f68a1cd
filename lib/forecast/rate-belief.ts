import { negativeBinomialQuantile } from "#lib/statistics/negative-binomial-quantile";

/**
 * What is believed of a weekly count before many weeks were seen: a gamma distribution of its rate. `events`
 * over `weeks` is the rate believed in, `weeks` how many weeks of data the belief weighs as much as.
 */
export type RateBelief = { readonly events: number; readonly weeks: number };

/**
 * Belief after some weeks were seen: the guess moves to the data as they come.
 *
 * @param before belief before, both numbers above 0
 * @param counts what was counted in each week since
 * @returns events and weeks added up
 * @throws RangeError when a number of the belief is not above 0
 * @see Johnson, Ott and Dogucu (2022), Bayes Rules!, chapter 5, gamma-Poisson conjugate family
 * @example updatedBelief({ events: 10, weeks: 2 }, [6, 2, 2, 1]) // { events: 21, weeks: 6 }
 */
export function updatedBelief(before: RateBelief, counts: readonly number[]): RateBelief {
  if (!(before.events > 0 && before.weeks > 0)) {
    throw new RangeError(
      `updatedBelief requires events and weeks above 0, got ${before.events} and ${before.weeks}`,
    );
  }
  return {
    events: before.events + counts.reduce((sum, count) => sum + count, 0),
    weeks: before.weeks + counts.length,
  };
}

/**
 * Share of the rate that is still the guess and not what was seen.
 *
 * @param guess belief before any week was seen
 * @param now belief now
 * @returns 0 to 1
 * @example guessedShare({ events: 40, weeks: 4 }, { events: 60, weeks: 6 }) // 0.667
 */
export function guessedShare(guess: RateBelief, now: RateBelief): number {
  return guess.weeks / now.weeks;
}

/**
 * Count over the coming weeks that is not exceeded with a given chance: negative binomial, as the rate itself
 * is uncertain.
 *
 * @param belief belief now
 * @param question weeks to come, above 0, and the chance between 0 and 1
 * @returns the least whole count whose chance of not being exceeded is at least that
 * @example believedQuantile({ events: 21, weeks: 6 }, { weeks: 2, chance: 0.95 }) // 12
 */
export function believedQuantile(
  belief: RateBelief,
  { weeks, chance }: { readonly weeks: number; readonly chance: number },
): number {
  const mean = (belief.events / belief.weeks) * weeks;
  return negativeBinomialQuantile(chance, { mean, size: belief.events });
}
