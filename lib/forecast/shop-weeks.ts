import { type ClosedCalendar, openDays } from "#lib/forecast/open-days";
import { addDays, type Day, weekStart } from "#lib/units/day";

/** One week of the shop. */
export type ShopWeek = {
  readonly weekStart: Day;
  readonly nextWeekStart: Day;
  /** more than half of its days were closed */
  readonly closed: boolean;
  /** the records begin after its first day */
  readonly partial: boolean;
};

/** What a list of weeks is made of. */
export type ShopWeeksQuestion = {
  /** first day of the shop's records, null when there are none */
  readonly firstDay: Day | null;
  readonly today: Day;
  /** 1 Monday to 7 Sunday */
  readonly weekStartsOn: number;
  readonly calendar: ClosedCalendar;
};

const DAYS_A_WEEK = 7;

/**
 * Weeks of the shop that are over: from the first week with records to the last full week before
 * today. A first week that the records do not cover from its first day is left out when later weeks
 * exist.
 *
 * @param question first day of records, today, the weekday weeks start on, the closed days
 * @returns weeks, oldest first
 * @example shopWeeks({ firstDay: day("2026-11-09"), today: day("2026-11-25"), weekStartsOn: 1,
 *   calendar: [] }) // the weeks of 9 and 16 November
 */
export function shopWeeks(question: ShopWeeksQuestion): ShopWeek[] {
  const { firstDay, today, weekStartsOn, calendar } = question;
  if (firstDay === null || firstDay > today) {
    return [];
  }
  const unfinished = weekStart(today, weekStartsOn);
  const weeks: ShopWeek[] = [];
  let start = weekStart(firstDay, weekStartsOn);
  while (start < unfinished) {
    const next = addDays(start, DAYS_A_WEEK);
    const closed = openDays(start, next, calendar) < DAYS_A_WEEK / 2;
    weeks.push({ weekStart: start, nextWeekStart: next, closed, partial: start < firstDay });
    start = next;
  }
  return weeks.length > 1 ? weeks.filter((week) => !week.partial) : weeks;
}
