import { type ClosedCalendar, openDays } from "#lib/forecast/open-days";
import type { SubjectForecast } from "#lib/forecast/shop/subject-forecast";
import { sumUpTo } from "#lib/forecast/sum-spread";
import { expectedUse, usedUpOn } from "#lib/forecast/use-path";
import { AMOUNT_PER_UNIT, type Amount } from "#lib/units/amount";
import { addDays, type Day, daysBetween } from "#lib/units/day";

/** What is on order and when it should come. */
export type Arrival = { readonly amount: Amount; readonly expectedOn: Day };

/** What a run-out day is made of. */
export type RunOutQuestion = {
  readonly today: Day;
  /** on hand, may be below 0 */
  readonly stock: Amount;
  /** on order, in any order */
  readonly arrivals: readonly Arrival[];
  /** arrivals up to this day count from the start; later ones once arrived */
  readonly countedUntil: Day;
  /** in use units */
  readonly forecast: Pick<SubjectForecast, "path" | "spread">;
  readonly calendar: ClosedCalendar;
};

/** The day on which stock ends, and all that was counted until then. */
export type RunOut = {
  /** null when it lasts for ten years */
  readonly day: Day | null;
  /** stock and what had come by that day */
  readonly counted: number;
};

/** A stock that lasts longer is given as lasting this long. */
const LONGEST_DAYS = 3650;
const DAYS_A_WEEK = 7;

/**
 * Likely run-out day: the first day that starts with nothing left at the expected use. Closed days use nothing.
 *
 * @param question stock, what is on its way, the use and the closed days
 * @returns the day, today when nothing is left; null when the stock lasts for ten years
 * @example likelyRunOut({ today: day("2026-11-25"), stock: amountOfUnits(30), arrivals: [],
 *   countedUntil: day("2026-11-25"), forecast, calendar: [] }).day // 2026-11-28 at 10 a day
 */
export function likelyRunOut(question: RunOutQuestion): RunOut {
  return runOut(question, (counted) => likelyEnd(question, counted));
}

/**
 * Careful run-out day: the first day by which stock is used up with more than the chance that the goal lets be. Never
 * after the likely one.
 *
 * @param question stock, what is on its way, the forecast and the closed days
 * @param level wanted chance that stock lasts until that day, between 0 and 1
 * @returns the day, today when nothing is left; null when the stock lasts for ten years
 */
export function carefulRunOut(question: RunOutQuestion, level: number): RunOut {
  return runOut(question, (counted) => {
    const { today } = question;
    const likely = likelyEnd(question, counted);
    const last = likely ?? addDays(today, LONGEST_DAYS);
    const isSure = (after: number) => chanceToLast(question, addDays(today, after), counted) >= level;
    const days = firstFailing(daysBetween(today, last), isSure);
    return days === null ? likely : addDays(today, days);
  });
}

/**
 * Chance that a stock lasts until a day (left out).
 *
 * @param question today, the forecast and the closed days
 * @param until the day
 * @param counted all that can be used until then, in parts of the use unit
 * @returns from 0 to 1
 */
export function chanceToLast(
  question: Pick<RunOutQuestion, "today" | "forecast" | "calendar">,
  until: Day,
  counted: number,
): number {
  const { today, forecast, calendar } = question;
  if (until <= today) return counted > 0 ? 1 : 0;
  const open = openDays(today, until, calendar);
  if (open === 0) return counted > 0 ? 1 : 0;
  const mean = expectedUse(forecast.path, { from: today, until }, calendar);
  return sumUpTo(forecast.spread, { mean, weeks: open / DAYS_A_WEEK }, counted / AMOUNT_PER_UNIT);
}

function runOut(question: RunOutQuestion, endOf: (counted: number) => Day | null): RunOut {
  const { stock, arrivals, countedUntil } = question;
  const later = arrivals
    .filter((arrival) => arrival.expectedOn > countedUntil)
    .toSorted((a, b) => (a.expectedOn < b.expectedOn ? -1 : 1));
  let counted = arrivals
    .filter((arrival) => arrival.expectedOn <= countedUntil)
    .reduce((sum, arrival) => sum + arrival.amount, stock as number);
  for (const arrival of later) {
    const day = endOf(counted);
    if (day !== null && day < arrival.expectedOn) return { day, counted };
    counted += arrival.amount;
  }
  return { day: endOf(counted), counted };
}

function likelyEnd({ today, forecast, calendar }: RunOutQuestion, counted: number): Day | null {
  const last = addDays(today, LONGEST_DAYS);
  return usedUpOn(forecast.path, { from: today, stock: counted / AMOUNT_PER_UNIT, last }, calendar);
}

/** The least whole number up to a limit for which a test that fails from some number on fails; null if it never does. */
function firstFailing(limit: number, holds: (days: number) => boolean): number | null {
  if (holds(limit)) return null;
  let low = -1;
  let high = limit;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return high;
}
