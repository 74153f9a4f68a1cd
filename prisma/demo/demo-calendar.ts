import { addDays, type Day, day, daysBetween, weekday, weekStart } from "#lib/units/day";
import { type Instant, instantOfTime, startOfDay } from "#lib/units/instant";

const DAYS_OF_HISTORY = 546;
const DAYS_SINCE_SWITCH = 210;
const DAYS_SINCE_PRICE_RISE = 150;
const DAYS_SINCE_NEW_RECIPE = 95;
/** Further ahead than any order of today reaches: lead time, review period and weeks of cover. */
const DAYS_UNTIL_MARKET = 70;
const DAYS_OF_MARKET = 14;
const DAYS_UNTIL_MUGS = 91;
const DAYS_OF_MUGS = 2;
const MONDAY = 1;
const MS_PER_MINUTE = 60_000;

/** The days that shape the demo shop's history. */
export type DemoCalendar = {
  readonly today: Day;
  readonly timeZone: string;
  /** First day with parcels; the shop counted and bought on the day before. */
  readonly firstDay: Day;
  readonly lastDay: Day;
  /** From here on paper fill instead of bubble fill. */
  readonly switchDay: Day;
  readonly priceRiseDay: Day;
  /** From here on the mug's card says one sheet more. */
  readonly newRecipeDay: Day;
  readonly closed: readonly DemoSpan[];
  /** A craft market of two weeks, still to come. */
  readonly market: DemoSpan;
  /** Mugs on offer for two days, still to come. */
  readonly mugOffer: DemoSpan;
};

/** Days in a row, both ends included. */
type DemoSpan = { readonly fromDay: Day; readonly toDay: Day };

/**
 * Lays out the demo shop's calendar: about 18 months that end yesterday.
 *
 * @param today - the shop's day
 * @param timeZone - the shop's time zone
 * @returns the days that shape its history
 * @example demoCalendar(day("2026-11-25"), "America/New_York").lastDay; // "2026-11-24"
 */
export function demoCalendar(today: Day, timeZone: string): DemoCalendar {
  const firstDay = addDays(today, -DAYS_OF_HISTORY);
  const years = range(Number(firstDay.slice(0, 4)) - 1, Number(today.slice(0, 4)) + 1);
  return {
    today,
    timeZone,
    firstDay,
    lastDay: addDays(today, -1),
    switchDay: addDays(today, -DAYS_SINCE_SWITCH),
    priceRiseDay: addDays(today, -DAYS_SINCE_PRICE_RISE),
    newRecipeDay: addDays(today, -DAYS_SINCE_NEW_RECIPE),
    closed: years.map((year) => ({ fromDay: day(`${year}-12-24`), toDay: day(`${year + 1}-01-03`) })),
    market: spanFrom(weekStart(addDays(today, DAYS_UNTIL_MARKET), MONDAY), DAYS_OF_MARKET),
    mugOffer: spanFrom(weekStart(addDays(today, DAYS_UNTIL_MUGS), MONDAY), DAYS_OF_MUGS),
  };
}

/** Whether the demo shop packs on a day: Monday to Friday, and not in its closed days. */
export function packsOn(calendar: DemoCalendar, on: Day): boolean {
  return weekday(on) <= 5 && !calendar.closed.some((span) => span.fromDay <= on && on <= span.toDay);
}

/** Every day from one to another, both included. */
export function daysFrom(first: Day, last: Day): Day[] {
  return range(0, daysBetween(first, last)).map((ahead) => addDays(first, ahead));
}

/**
 * Makes a clock for the demo shop's days.
 *
 * @param timeZone - the shop's time zone
 * @returns gives the instant so many minutes after a day began
 * @example demoClock("UTC")(day("2026-11-25"), 90); // "2026-11-25T01:30:00.000Z"
 */
export function demoClock(timeZone: string): (on: Day, minutes: number) => Instant {
  const starts = new Map<Day, number>();
  return (on, minutes) => {
    const start = starts.get(on) ?? Date.parse(startOfDay(on, timeZone));
    starts.set(on, start);
    return instantOfTime(start + minutes * MS_PER_MINUTE);
  };
}

function spanFrom(fromDay: Day, days: number): DemoSpan {
  return { fromDay, toDay: addDays(fromDay, days - 1) };
}

function range(first: number, last: number): number[] {
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => first + index);
}
