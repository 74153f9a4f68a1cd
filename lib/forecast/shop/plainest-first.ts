import type { PatternOfUse } from "#lib/forecast/pattern-of-use";
import { ownRoutes, type Route, SEVERAL_METHODS } from "#lib/forecast/route";

/** For use now and then: what follows a trend or a season finds one in chance. */
const NOW_AND_THEN = [
  "size and chance",
  "size over interval, less its bias",
  "mean of all weeks",
  "moving average",
];
const IN_MOST_WEEKS = ["simple smoothing", "moving average", SEVERAL_METHODS];

/**
 * Routes from a series' own history, the plainest first. For use now and then only the methods made for it are
 * taken, the one that lets a dying item die before the others.
 *
 * @param values the series as usual weeks, oldest first, at least one
 * @param pattern how it is used; null where nothing was used
 * @param horizon weeks of the sum that counts
 */
export function plainestFirst(
  values: readonly number[],
  pattern: PatternOfUse | null,
  horizon: number,
): Route[] {
  const routes = ownRoutes({ values, seasonLength: 1 }, horizon);
  const isRare = pattern !== null && (pattern.kind === "intermittent" || pattern.kind === "lumpy");
  const order = isRare ? NOW_AND_THEN : IN_MOST_WEEKS;
  const named = order.flatMap((name) => routes.filter((route) => route.name === name));
  if (isRare && named.length > 0) return named;
  return [...named, ...routes.filter((route) => !named.includes(route))];
}

const FEWEST_SEEN = 4;
const MOST_LOOKS = 52;

/**
 * From how many weeks seen on a series is looked back at: from the fifth week on, at most a year back. Early looks were
 * far off, and are what shows how far off a forecast can be.
 *
 * @param weeks length of the series
 * @param start how many weeks of it lie before the first use
 * @example firstOrigin(20) // 4
 */
export function firstOrigin(weeks: number, start = 0): number {
  return Math.max(start + FEWEST_SEEN, weeks - MOST_LOOKS);
}
