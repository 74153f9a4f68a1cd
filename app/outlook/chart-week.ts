import type { Day } from "#lib/units/day";
import type { OutlookWeek } from "./outlook-weeks";

const MOSTLY_CLOSED = 4;

/** A week as the chart draws it: plain values that can be sent to the browser. */
export type ChartWeek = {
  readonly week: Day;
  readonly used: number | null;
  readonly expected: number | null;
  readonly eightInTen: readonly [number, number] | null;
  readonly fiveInTen: readonly [number, number] | null;
  readonly isClosed: boolean;
};

/** Weeks that an event lasts on the chart, with its letter. */
export type ChartEvent = { readonly mark: string; readonly from: Day; readonly to: Day };

/**
 * Weeks as the chart draws them.
 *
 * @param weeks oldest first
 */
export function chartWeeks(weeks: readonly OutlookWeek[]): ChartWeek[] {
  return weeks.map(({ weekStart, used, expected, closedDays }) => ({
    week: weekStart,
    used,
    expected: expected?.mean ?? null,
    eightInTen: expected?.eightInTen ?? null,
    fiveInTen: expected?.fiveInTen ?? null,
    isClosed: closedDays >= MOSTLY_CLOSED,
  }));
}

/**
 * From which week to which each event lasts.
 *
 * @param weeks oldest first, with the letters of their events
 */
export function chartEvents(weeks: readonly OutlookWeek[]): ChartEvent[] {
  const marks = [...new Set(weeks.flatMap((week) => week.marks))].sort();
  return marks.flatMap((mark): ChartEvent[] => {
    const on = weeks.filter((week) => week.marks.includes(mark));
    const [first, last] = [on[0], on.at(-1)];
    return first === undefined || last === undefined
      ? []
      : [{ mark, from: first.weekStart, to: last.weekStart }];
  });
}
