import { addDays, type Day, daysBetween, maxDay } from "#lib/units/day";

/** Days on which the shop packs nothing, both ends included. */
export type ClosedSpan = { readonly fromDay: Day; readonly toDay: Day };

/** Closed spans in order of day, none touching another. */
export type ClosedCalendar = readonly ClosedSpan[];

/**
 * Calendar of the closed days: spans sorted, and joined where they meet or overlap.
 *
 * @param spans closed spans in any order
 * @returns the same days as few separate spans, oldest first
 * @throws RangeError when a span ends before it starts
 * @example closedCalendar([{ fromDay: day("2026-12-25"), toDay: day("2026-12-28") },
 *   { fromDay: day("2026-12-24"), toDay: day("2026-12-24") }]) // one span, 24 to 28 December
 */
export function closedCalendar(spans: readonly ClosedSpan[]): ClosedCalendar {
  const joined: { fromDay: Day; toDay: Day }[] = [];
  for (const span of spans.toSorted((a, b) => (a.fromDay < b.fromDay ? -1 : 1))) {
    if (span.toDay < span.fromDay) {
      throw new RangeError(
        `closedCalendar requires a span to end on or after ${span.fromDay}, got ${span.toDay}`,
      );
    }
    const last = joined.at(-1);
    if (last && span.fromDay <= addDays(last.toDay, 1)) {
      last.toDay = maxDay(last.toDay, span.toDay);
    } else {
      joined.push({ fromDay: span.fromDay, toDay: span.toDay });
    }
  }
  return joined;
}

/**
 * Open days from a day (included) until another (left out).
 *
 * @param from first day counted
 * @param until the day after the last one counted; not before `from`
 * @param calendar closed days
 * @returns days, a whole number from 0
 * @example openDays(day("2026-12-21"), day("2026-12-28"), []) // 7
 */
export function openDays(from: Day, until: Day, calendar: ClosedCalendar): number {
  const closed = calendar
    .filter((span) => span.toDay >= from && span.fromDay < until)
    .reduce((sum, span) => {
      const first = maxDay(span.fromDay, from);
      const after = span.toDay < until ? addDays(span.toDay, 1) : until;
      return sum + daysBetween(first, after);
    }, 0);
  return daysBetween(from, until) - closed;
}

/**
 * First day from `from` on that has `count` open days behind it, counted from `from`.
 *
 * @param from first day counted
 * @param count open days, a whole number from 0
 * @param calendar closed days
 * @returns the day; it may itself be closed
 * @example dayAfterOpenDays(day("2026-11-25"), 3, []) // 2026-11-28
 */
export function dayAfterOpenDays(from: Day, count: number, calendar: ClosedCalendar): Day {
  let reached = from;
  let left = count;
  for (const span of calendar) {
    if (span.toDay < reached) {
      continue;
    }
    const openBefore = Math.max(0, daysBetween(reached, span.fromDay));
    if (left <= openBefore) {
      break;
    }
    left -= openBefore;
    reached = addDays(span.toDay, 1);
  }
  return addDays(reached, left);
}

/**
 * The day itself if it is open, else the first open day after it.
 *
 * @param from where to start
 * @param calendar closed days
 * @example nextOpenDay(day("2026-11-25"), []) // 2026-11-25
 */
export function nextOpenDay(from: Day, calendar: ClosedCalendar): Day {
  const span = calendar.find(({ fromDay, toDay }) => fromDay <= from && from <= toDay);
  return span ? addDays(span.toDay, 1) : from;
}

/**
 * The day itself if it is open, else the last open day before it.
 *
 * @param from where to start
 * @param calendar closed days
 * @example lastOpenDay(day("2026-11-25"), []) // 2026-11-25
 */
export function lastOpenDay(from: Day, calendar: ClosedCalendar): Day {
  const span = calendar.find(({ fromDay, toDay }) => fromDay <= from && from <= toDay);
  return span ? addDays(span.fromDay, -1) : from;
}
