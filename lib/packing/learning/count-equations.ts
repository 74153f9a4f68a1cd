import { countDeviation } from "#lib/packing/learning/count-deviation";
import type { CountInterval } from "#lib/packing/learning/count-interval";
import type { StepBundle } from "#lib/packing/learning/step-bundles";
import type { Tridiagonal } from "#lib/statistics/tridiagonal";
import { unitsOf } from "#lib/units/amount";
import { type Day, daysBetween } from "#lib/units/day";

/** One equation for each interval: what went beyond the cards = sum of (factor - 1) · use by the cards + errors. */
export type CountEquations = {
  /** use units that went beyond the cards, by interval */
  readonly beyond: readonly number[];
  /** use units by the cards: row by interval, column by bundle */
  readonly byCards: readonly (readonly number[])[];
  /** variance of what single uses differ by, by interval */
  readonly useVariances: readonly number[];
  /** variance of each count; two intervals in a row share one */
  readonly countVariances: readonly number[];
  /** places of the opening and the closing count of each interval */
  readonly counts: readonly { readonly opening: number; readonly closing: number }[];
  /** how much each interval still counts, 0 to 1 */
  readonly left: readonly number[];
};

/** One use differs from the next by so much of the card, and a whole interval's hand by so much. Guesses. */
const SINGLE_USE_SPREAD = 0.3;
const INTERVAL_SPREAD = 0.05;
/** Days after which an interval counts half: hands change. A guess. */
const HALF_LIFE_DAYS = 180;
/** Even without a use by the cards something may have gone: use units. */
const LEAST_USE_DEVIATION = 0.25;

/**
 * Turns counts into equations. Received less what the shelf gained, less what was booked as spoilt, is what went; lines
 * that were changed by hand are taken as they were written.
 *
 * @param intervals of one supply, oldest first
 * @param bundles of `stepBundles`
 * @param today the day from which ages are counted
 * @example countEquations([elevenCardedThirteenGone], bundles, today).beyond // [2]
 */
export function countEquations(
  intervals: readonly CountInterval[],
  bundles: readonly StepBundle[],
  today: Day,
): CountEquations {
  const countVariances: number[] = [];
  const counts: { opening: number; closing: number }[] = [];
  const push = ({ counted, method }: CountInterval["opening"]): number =>
    countVariances.push(countDeviation(unitsOf(counted), method) ** 2) - 1;
  for (const [at, interval] of intervals.entries()) {
    const before = intervals[at - 1];
    const shared = before !== undefined && before.to === interval.from ? counts[at - 1]?.closing : undefined;
    const opening = shared ?? push(interval.opening);
    counts.push({ opening, closing: push(interval.closing) });
  }
  return {
    beyond: intervals.map((interval) => {
      const gone =
        unitsOf(interval.opening.counted) +
        unitsOf(interval.received) -
        unitsOf(interval.spoilt) -
        unitsOf(interval.closing.counted);
      return gone - unitsOf(interval.usedByBook);
    }),
    byCards: intervals.map((_, at) => bundles.map(({ byCards }) => byCards[at] ?? 0)),
    useVariances: intervals.map((_, at) => {
      const squares = bundles.reduce((sum, bundle) => sum + (bundle.squares[at] ?? 0), 0);
      const units = bundles.reduce((sum, { byCards }) => sum + (byCards[at] ?? 0), 0);
      return SINGLE_USE_SPREAD ** 2 * squares + (INTERVAL_SPREAD * units) ** 2 + LEAST_USE_DEVIATION ** 2;
    }),
    countVariances,
    counts,
    left: intervals.map(({ to }) => 0.5 ** (Math.max(0, daysBetween(to, today)) / HALF_LIFE_DAYS)),
  };
}

/**
 * Variances of the errors of the equations and what neighbours share: a count that is too high makes the interval before
 * it seem to use less and the one after it more.
 *
 * @param equations of `countEquations`
 * @param useFactor of the variances of use
 * @param countFactor of those of counts
 * @example errorCovariance(equations, 1, 1).beside // minus the variance of each shared count
 */
export function errorCovariance(
  { useVariances, countVariances, counts }: CountEquations,
  useFactor: number,
  countFactor: number,
): Tridiagonal {
  const countVariance = (place: number): number => countFactor * (countVariances[place] ?? 0);
  return {
    diagonal: counts.map(
      ({ opening, closing }, at) =>
        useFactor * (useVariances[at] ?? 0) + countVariance(opening) + countVariance(closing),
    ),
    beside: counts
      .slice(1)
      .map(({ opening }, at) => (opening === counts[at]?.closing ? -countVariance(opening) : 0)),
  };
}
