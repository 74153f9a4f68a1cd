import type { Brand } from "#lib/units/brand";
import { addDays, type Day, day } from "#lib/units/day";

/** A point in time: ISO 8601 text in UTC with milliseconds and Z. Instants compare and sort as text. */
export type Instant = Brand<string, "instant">;

const HOUR = 3_600_000;
/** No place has ever kept a clock further from UTC than this. */
const WIDEST_OFFSET = 16 * HOUR;

/**
 * An instant from its text.
 *
 * @param text - "2026-11-25T10:30:00.000Z"
 * @returns the same text, as an instant
 * @throws RangeError if it is not UTC text with milliseconds
 * @example instant("2026-11-25T10:30:00.000Z")
 */
export function instant(text: string): Instant {
  const time = Date.parse(text);
  if (Number.isNaN(time) || new Date(time).toISOString() !== text) {
    throw new RangeError(`instant requires UTC text with milliseconds, got ${text}`);
  }
  return text as Instant;
}

/**
 * An instant from milliseconds since 1970.
 *
 * @param milliseconds - whole milliseconds since 1970-01-01T00:00:00.000Z
 * @returns the instant
 * @throws RangeError if there is no such time
 * @example instantOfTime(0) // "1970-01-01T00:00:00.000Z"
 */
export function instantOfTime(milliseconds: number): Instant {
  return instant(new Date(milliseconds).toISOString());
}

/**
 * The shop's calendar day at an instant.
 *
 * @param at - instant
 * @param timeZone - name of the time zone, such as "Europe/Paris"
 * @returns the day on a calendar hung in that zone
 * @throws RangeError if the time zone is not known
 * @example shopDay(instant("2026-11-25T10:30:00.000Z"), "Pacific/Kiritimati") // "2026-11-26"
 */
export function shopDay(at: Instant, timeZone: string): Day {
  return dayAt(Date.parse(at), timeZone);
}

/**
 * The first millisecond of a shop's day, which is not always midnight where clocks change.
 *
 * @param of - day
 * @param timeZone - name of the time zone
 * @returns the first instant on that day, or of the next day where a zone skipped the day altogether
 * @throws RangeError if the time zone is not known
 * @example startOfDay(day("2026-11-26"), "Pacific/Kiritimati") // "2026-11-25T10:00:00.000Z"
 */
export function startOfDay(of: Day, timeZone: string): Instant {
  const midnight = Date.parse(`${of}T00:00:00Z`);
  let before = midnight - WIDEST_OFFSET;
  let onOrAfter = midnight + WIDEST_OFFSET;
  while (onOrAfter - before > 1) {
    const middle = Math.floor((before + onOrAfter) / 2);
    if (dayAt(middle, timeZone) >= of) onOrAfter = middle;
    else before = middle;
  }
  return instantOfTime(onOrAfter);
}

/**
 * The last millisecond of a shop's day.
 *
 * @param of - day
 * @param timeZone - name of the time zone
 * @returns the instant one millisecond before the next day starts
 * @throws RangeError if the time zone is not known
 * @example endOfDay(day("2026-11-26"), "Pacific/Kiritimati") // "2026-11-26T09:59:59.999Z"
 */
export function endOfDay(of: Day, timeZone: string): Instant {
  return instantOfTime(Date.parse(startOfDay(addDays(of, 1), timeZone)) - 1);
}

function dayAt(time: number, timeZone: string): Day {
  const parts = calendarOf(timeZone).formatToParts(time);
  const part = (type: string) => parts.find((each) => each.type === type)?.value ?? "";
  return day(`${part("year").padStart(4, "0")}-${part("month")}-${part("day")}`);
}

/** Making a calendar is slow; the ones made are kept. The answers do not depend on it. */
const calendars = new Map<string, Intl.DateTimeFormat>();

function calendarOf(timeZone: string): Intl.DateTimeFormat {
  const known = calendars.get(timeZone);
  if (known !== undefined) return known;
  const made = new Intl.DateTimeFormat("en-u-ca-iso8601-nu-latn", {
    timeZone,
    year: "numeric",
    month: "2-digit",
    day: "2-digit",
  });
  calendars.set(timeZone, made);
  return made;
}
