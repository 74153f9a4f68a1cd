import type { ClosedCalendar } from "#lib/forecast/open-days";
import { type UsePath, usedUpOn } from "#lib/forecast/use-path";
import { AMOUNT_PER_UNIT, type Amount } from "#lib/units/amount";
import { addDays, type Day } from "#lib/units/day";

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
  /** in use units */
  readonly path: UsePath;
  readonly calendar: ClosedCalendar;
};

/** A stock that lasts longer is given as lasting this long. */
const LONGEST_DAYS = 3650;

/**
 * Run-out day: the first day that starts with nothing left at the expected use. Closed days use
 * nothing.
 *
 * @param question stock, what is on its way, the use and the closed days
 * @returns the day, today when nothing is left; null when the stock lasts for ten years
 * @example runOut({ today: day("2026-11-25"), stock: amountOfUnits(30), arrivals: [],
 *   countedUntil: day("2026-11-25"), path: { firstWeek: day("2026-11-23"), perWeek: [70] }, calendar: [] }) // 2026-11-28
 */
export function runOut(question: RunOutQuestion): Day | null {
  const { stock, arrivals, countedUntil } = question;
  const later = arrivals
    .filter((arrival) => arrival.expectedOn > countedUntil)
    .toSorted((a, b) => (a.expectedOn < b.expectedOn ? -1 : 1));
  let usable = arrivals
    .filter((arrival) => arrival.expectedOn <= countedUntil)
    .reduce((sum, arrival) => sum + arrival.amount, stock);
  for (const arrival of later) {
    const end = endOf(usable, question);
    if (end !== null && end < arrival.expectedOn) {
      return end;
    }
    usable += arrival.amount;
  }
  return endOf(usable, question);
}

function endOf(usable: number, { today, path, calendar }: RunOutQuestion): Day | null {
  const last = addDays(today, LONGEST_DAYS);
  return usedUpOn(path, { from: today, stock: usable / AMOUNT_PER_UNIT, last }, calendar);
}
