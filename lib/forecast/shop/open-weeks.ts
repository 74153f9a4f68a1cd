import { type ClosedCalendar, openDays } from "#lib/forecast/open-days";
import type { ShopWeek } from "#lib/forecast/shop-weeks";
import type { Day } from "#lib/units/day";

const DAYS_A_WEEK = 7;

/** A week of the shop's past in which it packed. */
export type OpenWeek = {
  /** place among all weeks of the shop */
  readonly index: number;
  readonly weekStart: Day;
  readonly nextWeekStart: Day;
  /** open days of seven */
  readonly openShare: number;
};

/**
 * The weeks that a forecast looks at: whole weeks that are over and were not mostly closed.
 *
 * @param weeks the shop's weeks, oldest first
 * @param calendar closed days
 * @returns oldest first, each with its share of open days
 */
export function openWeeks(weeks: readonly ShopWeek[], calendar: ClosedCalendar): OpenWeek[] {
  return weeks.flatMap((week, index) => {
    if (week.closed || week.partial) return [];
    const { weekStart, nextWeekStart } = week;
    const openShare = openDays(weekStart, nextWeekStart, calendar) / DAYS_A_WEEK;
    return [{ index, weekStart, nextWeekStart, openShare }];
  });
}
