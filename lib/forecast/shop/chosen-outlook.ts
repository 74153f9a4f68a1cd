import type { PatternOfUse } from "#lib/forecast/pattern-of-use";
import { type RouteChoice, type RouteQuestion, routeChoice } from "#lib/forecast/route-choice";
import { comingPath } from "#lib/forecast/shop/coming-path";
import type { OpenWeek } from "#lib/forecast/shop/open-weeks";
import { saidSums } from "#lib/forecast/shop/said-sums";
import type { SubjectOutlook } from "#lib/forecast/shop/subject-forecast";
import type { Day } from "#lib/units/day";

/** A subject whose route is to be chosen. */
export type OutlookQuestion = Omit<RouteQuestion, "values"> & {
  /** as usual, oldest first, one an open week */
  readonly values: readonly number[];
  readonly weeks: readonly OpenWeek[];
  /** season, events and open days of those weeks together */
  readonly factors: readonly number[];
  /** first days of the coming weeks, and the season and events of each */
  readonly coming: readonly Day[];
  readonly comingFactors: readonly number[];
  readonly pattern: PatternOfUse | null;
};

/**
 * The route that looking back favours, and the outlook by it.
 *
 * @param question the subject's weeks and routes
 * @throws RangeError when there is no route
 */
export function chosenOutlook(question: OutlookQuestion): {
  readonly choice: RouteChoice;
  readonly outlook: SubjectOutlook;
} {
  const { values, weeks, factors, coming, comingFactors, pattern, horizon, chance, pooled } = question;
  const choice = routeChoice(question);
  const { route, spread, looks, tried } = choice;
  return {
    choice,
    outlook: {
      coming: {
        path: comingPath(route, { coming, factors: comingFactors }),
        spread,
        method: route.name,
        weeksSeen: values.length,
        guessedShare: 0,
        likeId: null,
      },
      past: {
        horizonWeeks: horizon,
        tried,
        said: saidSums({ looks, spread, pooled, horizon, chance, weeks, factors }),
        pattern,
      },
    },
  };
}
