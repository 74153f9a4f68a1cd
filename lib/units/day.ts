import type { Brand } from "#lib/units/brand";

/** A calendar day in the shop's time zone: text YYYY-MM-DD. Days compare and sort as text. */
export type Day = Brand<string, "day">;

const MILLISECONDS_PER_DAY = 86_400_000;
/** Days of each month, January first; February in a leap year has one more. */
const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
/** 1 January 1970, the day zero of the count below, was a Thursday. */
const WEEKDAY_OF_DAY_ZERO = 4;

/**
 * Whether a text is a day of the calendar.
 *
 * @param text - any text
 * @returns true for YYYY-MM-DD of a day that exists
 * @example isDay("2026-02-30") // false
 */
export function isDay(text: string): text is Day {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const month = Number(text.slice(5, 7));
  const date = Number(text.slice(8));
  const leapDay = month === 2 && isLeapYear(Number(text.slice(0, 4))) ? 1 : 0;
  return date >= 1 && date <= (MONTH_DAYS[month - 1] ?? 0) + leapDay;
}

/** Gregorian calendar, ISO 8601. */
function isLeapYear(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}

/**
 * A day from its text.
 *
 * @param text - YYYY-MM-DD
 * @returns the same text, as a day
 * @throws RangeError if there is no such day
 * @example day("2026-11-25")
 */
export function day(text: string): Day {
  if (!isDay(text)) throw new RangeError(`day requires YYYY-MM-DD of a day that exists, got ${text}`);
  return text;
}

/**
 * The day a number of days later.
 *
 * @param from - day
 * @param days - whole days; negative goes back
 * @returns the later day
 * @throws RangeError if `days` is not an integer, or the day leaves the years 0000 to 9999
 * @example addDays(day("2026-12-31"), 1) // "2027-01-01"
 */
export function addDays(from: Day, days: number): Day {
  if (!Number.isSafeInteger(days)) throw new RangeError(`addDays requires whole days, got ${days}`);
  const time = timeOf(from) + days * MILLISECONDS_PER_DAY;
  if (Math.abs(time) > 8.64e15)
    throw new RangeError(`addDays requires a day of the years 0000 to 9999, got ${days}`);
  return day(textOf(time));
}

/**
 * Days from one day to another.
 *
 * @param from - day
 * @param to - day
 * @returns whole days; negative if `to` is earlier
 * @example daysBetween(day("2026-11-25"), day("2026-12-09")) // 14
 */
export function daysBetween(from: Day, to: Day): number {
  return (timeOf(to) - timeOf(from)) / MILLISECONDS_PER_DAY;
}

/**
 * The day of the week.
 *
 * @param of - day
 * @returns 1 Monday to 7 Sunday
 * @see ISO 8601, day of the week
 * @example weekday(day("2026-11-25")) // 3
 */
export function weekday(of: Day): number {
  const count = timeOf(of) / MILLISECONDS_PER_DAY + WEEKDAY_OF_DAY_ZERO - 1;
  return (((count % 7) + 7) % 7) + 1;
}

/**
 * The first day of the week that holds a day.
 *
 * @param of - day
 * @param weekStartsOn - the shop's first day of the week, 1 Monday to 7 Sunday
 * @returns the day itself or one of the six before it
 * @throws RangeError if `weekStartsOn` is not 1 to 7
 * @example weekStart(day("2026-11-25"), 1) // "2026-11-23"
 */
export function weekStart(of: Day, weekStartsOn: number): Day {
  if (!Number.isInteger(weekStartsOn) || weekStartsOn < 1 || weekStartsOn > 7) {
    throw new RangeError(`weekStart requires a first day from 1 to 7, got ${weekStartsOn}`);
  }
  return addDays(of, -((weekday(of) - weekStartsOn + 7) % 7));
}

/**
 * The later of two days.
 *
 * @param first - day
 * @param second - day
 * @returns the later one
 * @example maxDay(day("2026-11-25"), day("2026-11-26")) // "2026-11-26"
 */
export function maxDay(first: Day, second: Day): Day {
  return first > second ? first : second;
}

/**
 * The earlier of two days.
 *
 * @param first - day
 * @param second - day
 * @returns the earlier one
 * @example minDay(day("2026-11-25"), day("2026-11-26")) // "2026-11-25"
 */
export function minDay(first: Day, second: Day): Day {
  return first < second ? first : second;
}

function timeOf(of: Day): number {
  return Date.parse(`${of}T00:00:00Z`);
}

function textOf(time: number): string {
  return new Date(time).toISOString().replace(/T.*$/, "");
}
