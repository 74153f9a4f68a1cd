import type { Route } from "#lib/forecast/route";
import type { UsePath } from "#lib/forecast/use-path";
import type { Day } from "#lib/units/day";

/** A trend is not carried on for longer than the sums that were looked back at. */
export const STEPS = 13;

/**
 * The coming weeks of a route, with season and events put back, never below 0; from the 13th week on as usual as then.
 *
 * @param route what is expected of weeks as usual
 * @param coming first days of the coming weeks, the running one first, and the factor of each
 */
export function comingPath(
  route: Pick<Route, "forecast">,
  { coming, factors }: { readonly coming: readonly Day[]; readonly factors: readonly number[] },
): UsePath {
  const asUsual = route.forecast(STEPS);
  const [firstWeek] = coming;
  if (firstWeek === undefined) throw new RangeError("comingPath requires a coming week, got none");
  return {
    firstWeek,
    perWeek: coming.map((_, week) => {
      const usual = asUsual[Math.min(week, STEPS - 1)] ?? 0;
      return Math.max(0, usual) * (factors[week] ?? 1);
    }),
  };
}
