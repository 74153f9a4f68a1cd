import type { ClosedCalendar } from "#lib/forecast/open-days";
import { expectedUse, type UsePath } from "#lib/forecast/use-path";
import { AMOUNT_PER_UNIT, type Amount, amount } from "#lib/units/amount";
import { addDays, type Day } from "#lib/units/day";

/** What a coming peak takes of a supply. */
export type PeakPreparation = {
  /** first day of its busiest week */
  readonly busiestWeek: Day;
  /** use of that week over what is used now */
  readonly times: number;
  /** the day from which use is nearly as now again, or as far as the forecast reaches */
  readonly until: Day;
  /** expected to be used from today until then */
  readonly needed: Amount;
  /** of that not on hand and not on order */
  readonly missing: Amount;
};

/** A busiest week of less than so many times the present use is no peak; a guess, no source. */
const PEAK_TIMES = 1.3;
/** The peak is over where use is below so many times the present one; a guess, no source. */
const OVER_TIMES = 1.15;
const DAYS_A_WEEK = 7;

/**
 * Preparation for a peak that the forecast sees coming, by last year's shape and planned events: the busiest week, and
 * what is used until it is over.
 *
 * @param of expected use a week, what is on hand and on order, today
 * @param calendar closed days
 * @returns null where no week comes that takes 1.3 times as much as this one and the next
 * @example peakPreparation({ path: { firstWeek: monday, perWeek: [10, 10, 20, 10] }, position, today: monday }, [])?.times // 2
 */
export function peakPreparation(
  of: { readonly path: UsePath; readonly position: Amount; readonly today: Day },
  calendar: ClosedCalendar,
): PeakPreparation | null {
  const { path, position, today } = of;
  const { perWeek, firstWeek } = path;
  const now = ((perWeek[0] ?? 0) + (perWeek[1] ?? perWeek[0] ?? 0)) / 2;
  const most = Math.max(...perWeek);
  const busiest = perWeek.indexOf(most);
  if (now <= 0 || busiest < 2 || most < PEAK_TIMES * now) return null;
  const over = perWeek.findIndex((each, week) => week > busiest && each < OVER_TIMES * now);
  const until = addDays(firstWeek, (over < 0 ? perWeek.length : over) * DAYS_A_WEEK);
  const needed = amount(Math.ceil(expectedUse(path, { from: today, until }, calendar) * AMOUNT_PER_UNIT));
  return {
    busiestWeek: addDays(firstWeek, busiest * DAYS_A_WEEK),
    times: most / now,
    until,
    needed,
    missing: amount(Math.max(0, needed - position)),
  };
}
