import { type ClosedCalendar, openDays } from "#lib/forecast/open-days";
import type { SubjectForecast } from "#lib/forecast/shop/subject-forecast";
import { sumQuantile } from "#lib/forecast/sum-spread";
import { expectedUse } from "#lib/forecast/use-path";
import type { Day } from "#lib/units/day";

const DAYS_A_WEEK = 7;
/** Ends of the bands that hold 8 and 5 times in 10, as the looks back take them. */
const EIGHT_IN_TEN = [0.1, 0.9] as const;
const FIVE_IN_TEN = [0.25, 0.75] as const;

/** The sum of a span of days, how far it can be off, and what would be enough. Unit of the forecast. */
export type SumOutlook = {
  readonly mean: number;
  /** 8 times in 10 the sum lies between these */
  readonly low: number;
  readonly high: number;
  /** not exceeded with the shop's service level */
  readonly enough: number;
};

/** A span of days asked about. */
export type SumQuestion = {
  readonly from: Day;
  /** the day after the last one */
  readonly until: Day;
  readonly calendar: ClosedCalendar;
  /** chance that `enough` is enough, between 0 and 1 */
  readonly serviceLevel: number;
};

/**
 * What a span of days is expected to take. Closed days take nothing and make the sum no less sure.
 *
 * @param forecast path and spread
 * @param question days, not before the path, and the service level
 * @returns 0 all over where every day is closed
 * @throws RangeError when the span begins before the path
 */
export function expectedSum(
  { path, spread }: Pick<SubjectForecast, "path" | "spread">,
  { from, until, calendar, serviceLevel }: SumQuestion,
): SumOutlook {
  const mean = expectedUse(path, { from, until }, calendar);
  const sum = { mean, weeks: Math.max(1, openDays(from, until, calendar)) / DAYS_A_WEEK };
  return {
    mean,
    low: sumQuantile(spread, sum, EIGHT_IN_TEN[0]),
    high: sumQuantile(spread, sum, EIGHT_IN_TEN[1]),
    enough: sumQuantile(spread, sum, serviceLevel),
  };
}

/** What one week is expected to take, with both bands. */
export type WeekOutlook = {
  readonly mean: number;
  readonly eightInTen: readonly [low: number, high: number];
  readonly fiveInTen: readonly [low: number, high: number];
};

/**
 * What a single coming week is expected to take. The spread knows sums that begin now; a week further off is taken to
 * be no surer than the sum that ends with it.
 *
 * @param forecast path and spread
 * @param week its days, and how many weeks ahead it is: 1 for the running one
 * @param calendar closed days
 */
export function expectedWeek(
  { path, spread }: Pick<SubjectForecast, "path" | "spread">,
  week: { readonly from: Day; readonly until: Day; readonly ahead: number },
  calendar: ClosedCalendar,
): WeekOutlook {
  const sum = { mean: expectedUse(path, week, calendar), weeks: 1 };
  const { dispersions } = spread;
  const far = dispersions[Math.min(week.ahead, dispersions.length) - 1] ?? 0;
  const single = { ...spread, dispersions: [Math.max(dispersions[0] ?? 0, far)] };
  const band = ([low, high]: readonly [number, number]) =>
    [sumQuantile(single, sum, low), sumQuantile(single, sum, high)] as const;
  return { mean: sum.mean, eightInTen: band(EIGHT_IN_TEN), fiveInTen: band(FIVE_IN_TEN) };
}
