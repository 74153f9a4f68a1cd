import { type Day, weekday } from "#lib/units/day";

const WEEKDAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"] as const;
const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

/**
 * A day in few letters.
 *
 * @param of - day
 * @param show - `weekday` puts the day of the week before it, `year` the year behind it
 * @returns "27 Nov", "Fri 27 Nov", "27 Nov 2026"
 * @example formatDay(day("2026-11-27"), { weekday: true }) // "Fri 27 Nov"
 */
export function formatDay(
  of: Day,
  show: { readonly weekday?: boolean; readonly year?: boolean } = {},
): string {
  const text = `${dayOfMonth(of)} ${monthName(of).slice(0, 3)}`;
  const before = show.weekday === true ? `${weekdayName(of).slice(0, 3)} ` : "";
  return `${before}${text}${show.year === true ? ` ${of.slice(0, 4)}` : ""}`;
}

/**
 * A day in full.
 *
 * @param of - day
 * @returns day of the week, day and month
 * @example formatDayLong(day("2026-11-25")) // "Wednesday 25 November"
 */
export function formatDayLong(of: Day): string {
  return `${weekdayName(of)} ${dayOfMonth(of)} ${monthName(of)}`;
}

function dayOfMonth(of: Day): number {
  return Number(of.slice(8, 10));
}

function monthName(of: Day): string {
  return MONTHS[Number(of.slice(5, 7)) - 1] ?? "";
}

function weekdayName(of: Day): string {
  return WEEKDAYS[weekday(of) - 1] ?? "";
}
