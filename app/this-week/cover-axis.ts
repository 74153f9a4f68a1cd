import { addDays, type Day, daysBetween, maxDay, minDay, weekStart } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";

/** What all cover strips of the screen are drawn against: so many days from today. */
export type CoverAxis = {
  readonly from: Day;
  readonly days: number;
  /** The first days of the weeks, with their place in percent of the axis. */
  readonly ticks: readonly { readonly day: Day; readonly percent: number; readonly words: string }[];
};

/** Ten weeks: past the longest lead time of common practice and the eight weeks that an order should last. */
const AXIS_DAYS = 70;

/**
 * The time axis from today, with a tick at each start of a week. The month is named where it changes.
 *
 * @param today - first day of the axis
 * @param weekStartsOn - 1 Monday to 7 Sunday
 * @returns the axis
 */
export function coverAxis(today: Day, weekStartsOn: number): CoverAxis {
  const first = addDays(weekStart(today, weekStartsOn), 7);
  const days = Array.from({ length: AXIS_DAYS / 7 }, (_, index) => addDays(first, index * 7));
  const ticks = days.map((day, index) => ({
    day,
    percent: percentOn({ from: today, days: AXIS_DAYS }, day),
    words: index === 0 || Number(day.slice(8)) <= 7 ? formatDay(day) : String(Number(day.slice(8))),
  }));
  return { from: today, days: AXIS_DAYS, ticks: ticks.filter((tick) => tick.percent < 98) };
}

/**
 * Where a day lies on the axis, days outside it at its ends.
 *
 * @param axis - the axis
 * @param day - the day to place
 * @returns percent of the axis, 0 to 100
 */
export function percentOn(axis: Pick<CoverAxis, "from" | "days">, day: Day): number {
  const inside = maxDay(axis.from, minDay(day, addDays(axis.from, axis.days)));
  return (daysBetween(axis.from, inside) / axis.days) * 100;
}
