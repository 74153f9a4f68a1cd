import { type ClosedCalendar, dayAfterOpenDays } from "#lib/forecast/open-days";
import { addDays, type Day, daysBetween } from "#lib/units/day";

const DAYS_A_WEEK = 7;
/** Rounding of sevenths, in the unit of the path: no stock. */
const NOTHING = 1e-9;

/** Expected use in the coming weeks. What lies after the last week is as the last week. */
export type UsePath = {
  /** first day of the first week */
  readonly firstWeek: Day;
  /** expected use of each week if all its days are open, at least one; any unit */
  readonly perWeek: readonly number[];
};

/**
 * Expected use from a day (included) until another (left out): each open day takes a seventh of its week's.
 *
 * @param path expected use a week
 * @param span from, not before the first week, and until
 * @param calendar closed days
 * @returns in the unit of the path
 * @throws RangeError when the span begins before the path
 * @example expectedUse({ firstWeek: monday, perWeek: [70, 140] }, { from: monday, until: addDays(monday, 14) }, []) // 210
 */
export function expectedUse(
  path: UsePath,
  { from, until }: { readonly from: Day; readonly until: Day },
  calendar: ClosedCalendar,
): number {
  if (from < path.firstWeek) {
    throw new RangeError(`expectedUse requires a day from ${path.firstWeek}, got ${from}`);
  }
  const end = daysBetween(path.firstWeek, until);
  const closed = closedFrom(path, from, calendar);
  let sum = 0;
  let at = daysBetween(path.firstWeek, from);
  while (at < end) {
    const next = Math.min(end, nextWeek(at));
    sum += (perWeekAt(path, at) * openBetween(at, next, closed)) / DAYS_A_WEEK;
    at = next;
  }
  return sum;
}

/**
 * The first day that starts with nothing left.
 *
 * @param path expected use a week
 * @param question from which day, not before the first week, a stock is used, in the unit of the path, and the last
 * day looked at
 * @param calendar closed days
 * @returns the day; `from` where there is no stock; null where it lasts beyond `last`
 * @throws RangeError when the use begins before the path
 * @example usedUpOn({ firstWeek: monday, perWeek: [70] }, { from: monday, stock: 30, last }, []) // Thursday
 */
export function usedUpOn(
  path: UsePath,
  question: { readonly from: Day; readonly stock: number; readonly last: Day },
  calendar: ClosedCalendar,
): Day | null {
  const { from, stock } = question;
  if (from < path.firstWeek) {
    throw new RangeError(`usedUpOn requires a day from ${path.firstWeek}, got ${from}`);
  }
  if (stock <= 0) return from;
  const last = daysBetween(path.firstWeek, question.last);
  const flatFrom = (path.perWeek.length - 1) * DAYS_A_WEEK;
  const closed = closedFrom(path, from, calendar);
  let left = stock;
  let at = daysBetween(path.firstWeek, from);
  while (at <= last && at < flatFrom) {
    const next = nextWeek(at);
    const used = (perWeekAt(path, at) * openBetween(at, next, closed)) / DAYS_A_WEEK;
    if (used >= left - NOTHING) {
      const end = dayUsedUp({ at, left, perDay: perWeekAt(path, at) / DAYS_A_WEEK }, closed);
      return end > last ? null : addDays(path.firstWeek, end);
    }
    left -= used;
    at = next;
  }
  return at > last ? null : usedUpEvenly({ path, at, left }, question.last, calendar);
}

/** From here on all weeks are alike: their days are reckoned at once. */
function usedUpEvenly(
  { path, at, left }: { readonly path: UsePath; readonly at: number; readonly left: number },
  last: Day,
  calendar: ClosedCalendar,
): Day | null {
  const perWeek = path.perWeek.at(-1) ?? 0;
  if (perWeek <= 0) return null;
  const from = addDays(path.firstWeek, at);
  const days = Math.ceil(((left - NOTHING) * DAYS_A_WEEK) / perWeek);
  if (days > daysBetween(from, last)) return null;
  const end = dayAfterOpenDays(from, Math.max(1, days), calendar);
  return end > last ? null : end;
}

// Days are numbers here, counted from the path's first: the texts of days take longer than all the rest.

/** Closed days: from the first of them until the one after the last. */
type ClosedNumbers = readonly { readonly from: number; readonly until: number }[];

function closedFrom(path: UsePath, from: Day, calendar: ClosedCalendar): ClosedNumbers {
  return calendar
    .filter((span) => span.toDay >= from)
    .map(({ fromDay, toDay }) => ({
      from: daysBetween(path.firstWeek, fromDay),
      until: daysBetween(path.firstWeek, toDay) + 1,
    }));
}

function openBetween(from: number, until: number, closed: ClosedNumbers): number {
  let open = until - from;
  for (const span of closed) open -= Math.max(0, Math.min(until, span.until) - Math.max(from, span.from));
  return open;
}

function nextWeek(at: number): number {
  return (Math.floor(at / DAYS_A_WEEK) + 1) * DAYS_A_WEEK;
}

function perWeekAt({ perWeek }: UsePath, at: number): number {
  return perWeek[Math.min(Math.floor(at / DAYS_A_WEEK), perWeek.length - 1)] ?? 0;
}

/** The day of a week on which what is left is used up. */
function dayUsedUp(
  of: { readonly at: number; readonly left: number; readonly perDay: number },
  closed: ClosedNumbers,
): number {
  let { at, left } = of;
  const next = nextWeek(at);
  while (at < next && left > NOTHING) {
    left -= of.perDay * openBetween(at, at + 1, closed);
    at += 1;
  }
  return at;
}
