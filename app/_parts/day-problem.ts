import { type Day, day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";

/** Before this day a year was mistyped: no shop keeps such old lines. */
const EARLIEST = day("2000-01-01");

/**
 * What is wrong with the day of something that has happened.
 *
 * @param on the day as chosen
 * @param today the shop's day
 * @param notBefore the first day that it can have happened on, such as the day a parcel was packed
 * @returns words with the way out, or null where the day may stand
 * @example dayProblem(day("2030-01-01"), day("2026-11-25")) // "1 Jan 2030 is still ahead. Choose today or an earlier day."
 */
export function dayProblem(on: Day, today: Day, notBefore: Day = EARLIEST): string | null {
  const chosen = formatDay(on, { year: true });
  if (on > today) return `${chosen} is still ahead. Choose today or an earlier day.`;
  if (on < EARLIEST) return `${chosen} is too long ago. Check the year.`;
  if (on < notBefore) {
    return `${chosen} lies before the parcel was packed, on ${formatDay(notBefore, { year: true })}. Choose a later day.`;
  }
  return null;
}
