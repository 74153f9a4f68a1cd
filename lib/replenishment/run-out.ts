import { type ClosedCalendar, dayAfterOpenDays } from "#lib/forecast/open-days";
import type { Amount } from "#lib/units/amount";
import { addDays, type Day, minDay } from "#lib/units/day";

/** What is on order and when it should come. */
export type Arrival = { readonly amount: Amount; readonly expectedOn: Day };

/** What a run-out day is made of. */
export type RunOutQuestion = {
  readonly today: Day;
  /** what may be used: on hand, less the safety stock for the careful day; may be below 0 */
  readonly stock: number;
  /** on order, in any order */
  readonly arrivals: readonly Arrival[];
  /** arrivals up to this day count from the start; later ones once arrived */
  readonly countedUntil: Day;
  readonly usePerWeek: Amount;
  readonly calendar: ClosedCalendar;
};

const DAYS_A_WEEK = 7;
/** A stock that lasts longer is given as lasting this long. */
const LONGEST_DAYS = 3650;

/**
 * Run-out day: the first day that starts with nothing left at the expected use. Closed days use
 * nothing.
 *
 * @param question stock, what is on its way, the use and the closed days
 * @returns the day, today when nothing is left, at most ten years ahead; null when nothing is used
 * @example runOut({ today: day("2026-11-25"), stock: amountOfUnits(30), arrivals: [],
 *   countedUntil: day("2026-11-25"), usePerWeek: amountOfUnits(70), calendar: [] }) // 2026-11-28
 */
export function runOut(question: RunOutQuestion): Day | null {
  const { today, stock, arrivals, countedUntil, usePerWeek, calendar } = question;
  const later = arrivals
    .filter((arrival) => arrival.expectedOn > countedUntil)
    .toSorted((a, b) => (a.expectedOn < b.expectedOn ? -1 : 1));
  let usable = arrivals
    .filter((arrival) => arrival.expectedOn <= countedUntil)
    .reduce((sum, arrival) => sum + arrival.amount, stock);
  for (const arrival of later) {
    const end = endOf(usable, usePerWeek, today, calendar);
    if (end !== null && end < arrival.expectedOn) {
      return end;
    }
    usable += arrival.amount;
  }
  return endOf(usable, usePerWeek, today, calendar);
}

function endOf(usable: number, usePerWeek: Amount, today: Day, calendar: ClosedCalendar): Day | null {
  if (usable <= 0) {
    return today;
  }
  if (usePerWeek <= 0) {
    return null;
  }
  const days = Math.min(LONGEST_DAYS, Math.ceil((usable * DAYS_A_WEEK) / usePerWeek));
  const end = dayAfterOpenDays(today, days, calendar);
  return minDay(end, addDays(today, LONGEST_DAYS));
}
