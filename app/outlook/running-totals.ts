import type { ClosedCalendar } from "#lib/forecast/open-days";
import type { SubjectForecast } from "#lib/forecast/shop/subject-forecast";
import { addDays, type Day } from "#lib/units/day";
import { expectedSum, type SumOutlook } from "./expected-sum";
import { WEEKS_AHEAD } from "./outlook-weeks";

const DAYS_A_WEEK = 7;

/** What is expected from today on, over some weeks. */
export type RunningTotal = SumOutlook & {
  readonly weeks: number;
  /** last day that is counted */
  readonly lastDay: Day;
};

/**
 * Running totals from today on over 1 to 13 weeks of seven days, today counted.
 *
 * @param forecast path and spread
 * @param question today, closed days, service level
 * @returns one a week, the shortest first
 */
export function runningTotals(
  forecast: Pick<SubjectForecast, "path" | "spread">,
  question: { readonly today: Day; readonly calendar: ClosedCalendar; readonly serviceLevel: number },
): RunningTotal[] {
  return Array.from({ length: WEEKS_AHEAD }, (_, index) =>
    runningTotal(forecast, { ...question, weeks: index + 1 }),
  );
}

/** The running total over a number of weeks. */
export function runningTotal(
  forecast: Pick<SubjectForecast, "path" | "spread">,
  {
    today,
    weeks,
    calendar,
    serviceLevel,
  }: {
    readonly today: Day;
    readonly weeks: number;
    readonly calendar: ClosedCalendar;
    readonly serviceLevel: number;
  },
): RunningTotal {
  const until = addDays(today, weeks * DAYS_A_WEEK);
  const sum = expectedSum(forecast, { from: today, until, calendar, serviceLevel });
  return { weeks, lastDay: addDays(until, -1), ...sum };
}
