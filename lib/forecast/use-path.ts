import { type ClosedCalendar, dayAfterOpenDays, openDays } from "#lib/forecast/open-days";
import { addDays, type Day, daysBetween, maxDay, minDay } from "#lib/units/day";

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
  let sum = 0;
  for (const week of weeksOf(path, from)) {
    const end = minDay(week.next, until);
    if (week.start < end) sum += (week.perWeek * openDays(week.start, end, calendar)) / DAYS_A_WEEK;
    if (until <= week.next) break;
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
  let left = stock;
  const flatFrom = addDays(path.firstWeek, (path.perWeek.length - 1) * DAYS_A_WEEK);
  for (const week of weeksOf(path, from)) {
    if (week.start > question.last) return null;
    if (week.start >= flatFrom) return usedUpEvenly(week, left, question.last, calendar);
    const used = (week.perWeek * openDays(week.start, week.next, calendar)) / DAYS_A_WEEK;
    if (used >= left - NOTHING) return notAfter(dayUsedUp(week, left, calendar), question.last);
    left -= used;
  }
  return null;
}

/** From here on all weeks are alike: their days are reckoned at once. */
function usedUpEvenly(week: PathWeek, stock: number, last: Day, calendar: ClosedCalendar): Day | null {
  if (week.perWeek <= 0) return null;
  const days = Math.ceil(((stock - NOTHING) * DAYS_A_WEEK) / week.perWeek);
  if (days > daysBetween(week.start, last)) return null;
  return notAfter(dayAfterOpenDays(week.start, Math.max(1, days), calendar), last);
}

function notAfter(end: Day, last: Day): Day | null {
  return end > last ? null : end;
}

type PathWeek = { readonly start: Day; readonly next: Day; readonly perWeek: number };

/** The weeks of a path from a day on, without end. */
function* weeksOf(path: UsePath, from: Day): Generator<PathWeek> {
  let index = Math.floor(daysBetween(path.firstWeek, from) / DAYS_A_WEEK);
  for (;;) {
    const weekStart = addDays(path.firstWeek, index * DAYS_A_WEEK);
    const perWeek = path.perWeek[Math.min(index, path.perWeek.length - 1)] ?? 0;
    yield { start: maxDay(weekStart, from), next: addDays(weekStart, DAYS_A_WEEK), perWeek };
    index += 1;
  }
}

function dayUsedUp(week: PathWeek, stock: number, calendar: ClosedCalendar): Day {
  let left = stock;
  let at = week.start;
  while (at < week.next) {
    const next = addDays(at, 1);
    left -= (week.perWeek * openDays(at, next, calendar)) / DAYS_A_WEEK;
    at = next;
    if (left <= NOTHING) break;
  }
  return at;
}
