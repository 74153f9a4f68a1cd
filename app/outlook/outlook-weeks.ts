import { type ClosedCalendar, openDays } from "#lib/forecast/open-days";
import type { PlannedEvent } from "#lib/forecast/planned-event";
import type { SubjectForecast } from "#lib/forecast/shop/subject-forecast";
import { addDays, type Day } from "#lib/units/day";
import type { PastWeek } from "#prisma/records/forecast-parts";
import { expectedWeek, type WeekOutlook } from "./expected-sum";

const DAYS_A_WEEK = 7;
/** Weeks ahead that the spread was looked back at. */
export const WEEKS_AHEAD = 13;
/** Half a year shows the run of trade and stays legible. */
export const WEEKS_BEFORE = 26;

/** An event with the letter that marks it on the chart. */
export type MarkedEvent = { readonly mark: string; readonly event: PlannedEvent };

/** One week of the chart, past or coming. */
export type OutlookWeek = {
  readonly weekStart: Day;
  /** as the forecast counts it; null in coming weeks */
  readonly used: number | null;
  /** as it was booked; null in coming weeks */
  readonly recorded: number | null;
  /** null in past weeks */
  readonly expected: WeekOutlook | null;
  readonly closedDays: number;
  /** letters of the events that fall into it */
  readonly marks: readonly string[];
};

/** What the weeks of the chart are made of. */
export type WeeksQuestion = {
  readonly forecast: Pick<SubjectForecast, "path" | "spread">;
  /** oldest first */
  readonly past: readonly PastWeek[];
  readonly calendar: ClosedCalendar;
  readonly events: readonly MarkedEvent[];
};

/**
 * Weeks of the chart: the last 26 that are over as the forecast counts them, then the running one and twelve more.
 *
 * @param question forecast, past weeks, closed days and events
 * @returns oldest first
 */
export function outlookWeeks({ forecast, past, calendar, events }: WeeksQuestion): OutlookWeek[] {
  const frame = (start: Day) => {
    const next = addDays(start, DAYS_A_WEEK);
    return {
      weekStart: start,
      closedDays: DAYS_A_WEEK - openDays(start, next, calendar),
      marks: events.filter(({ event }) => fallsInto(event, start, next)).map(({ mark }) => mark),
    };
  };
  const before = past.slice(-WEEKS_BEFORE).map(
    (week): OutlookWeek => ({
      ...frame(week.weekStart),
      used: week.restated,
      recorded: week.recorded,
      expected: null,
    }),
  );
  const coming = Array.from({ length: WEEKS_AHEAD }, (_, index): OutlookWeek => {
    const from = addDays(forecast.path.firstWeek, index * DAYS_A_WEEK);
    const week = { from, until: addDays(from, DAYS_A_WEEK), ahead: index + 1 };
    return {
      ...frame(from),
      used: null,
      recorded: null,
      expected: expectedWeek(forecast, week, calendar),
    };
  });
  return [...before, ...coming];
}

/**
 * Events that fall into the weeks of the chart and hold for the subject, each with a letter in order of day.
 *
 * @param events in any order
 * @param span first day shown and the day after the last
 * @param itemTypeId where the subject is an item type; null for the shop and for supplies, which any type may take
 */
export function markedEvents(
  events: readonly PlannedEvent[],
  span: { readonly from: Day; readonly until: Day },
  itemTypeId: string | null,
): MarkedEvent[] {
  return events
    .filter((event) => fallsInto(event, span.from, span.until))
    .filter(
      ({ itemTypeIds }) =>
        itemTypeId === null || itemTypeIds.length === 0 || itemTypeIds.includes(itemTypeId),
    )
    .toSorted((a, b) => (a.fromDay < b.fromDay ? -1 : 1))
    .map((event, index) => ({ mark: markOf(index), event }));
}

function fallsInto(event: PlannedEvent, from: Day, until: Day): boolean {
  return event.fromDay < until && event.toDay >= from;
}

const LETTERS = 26;
const LETTER_A = 65;

/** A to Z, then A2, B2 and so on. */
function markOf(index: number): string {
  const round = Math.floor(index / LETTERS);
  return `${String.fromCharCode(LETTER_A + (index % LETTERS))}${round === 0 ? "" : round + 1}`;
}
