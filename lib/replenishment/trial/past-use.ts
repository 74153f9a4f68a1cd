import { type ClosedCalendar, openDays } from "#lib/forecast/open-days";
import type { SubjectForecast } from "#lib/forecast/shop/subject-forecast";
import type { DayUse } from "#lib/forecast/weekly-use";
import { WEEKS_BEFORE } from "#lib/replenishment/trial/trial-span";
import { unitsOf } from "#lib/units/amount";
import { addDays, type Day, daysBetween } from "#lib/units/day";

const DAYS_A_WEEK = 7;

/**
 * Recorded use, a figure for each day.
 *
 * @param useByDay days with use, in any order
 * @param span first day and how many days
 * @returns use units; 0 where nothing was used, below 0 where more came back
 * @example recordedUse([{ day: day("2026-11-03"), amount: amountOfUnits(2) }], { firstDay: day("2026-11-02"), days: 3 })
 *   // [0, 2, 0]
 */
export function recordedUse(
  useByDay: readonly DayUse[],
  { firstDay, days }: { readonly firstDay: Day; readonly days: number },
): number[] {
  const perDay = new Array<number>(days).fill(0);
  for (const use of useByDay) {
    const at = daysBetween(firstDay, use.day);
    if (at >= 0 && at < days) perDay[at] = (perDay[at] ?? 0) + unitsOf(use.amount);
  }
  return perDay;
}

/**
 * What would have been forecast on a day of the past, plainly: as much a week as the mean of the eight weeks before.
 * How far off that may be is taken from today's forecast, which knows it from looking back.
 *
 * @param forecast today's
 * @param useByDay recorded use
 * @param calendar closed days
 * @returns a forecast by the day it is made on
 * @example pastForecast(forecast, useByDay, [])(day("2026-02-02")).path.perWeek // [31]
 */
export function pastForecast(
  forecast: SubjectForecast,
  useByDay: readonly DayUse[],
  calendar: ClosedCalendar,
): (on: Day) => SubjectForecast {
  return (on) => {
    const from = addDays(on, -WEEKS_BEFORE * DAYS_A_WEEK);
    const used = useByDay
      .filter(({ day }) => from <= day && day < on)
      .reduce((sum, { amount }) => sum + unitsOf(amount), 0);
    const open = Math.max(1, openDays(from, on, calendar));
    const perWeek = Math.max(0, (used * DAYS_A_WEEK) / open);
    return { ...forecast, path: { firstWeek: on, perWeek: [perWeek] } };
  };
}
