import { type ClosedCalendar, lastOpenDay, nextOpenDay } from "#lib/forecast/open-days";
import { addDays, type Day, daysBetween, maxDay } from "#lib/units/day";

/**
 * Arrival day: when an order placed on a day comes; on a closed day it comes on the next open one.
 *
 * @param orderedOn the day the order is placed
 * @param leadTimeDays days from order to shelf, a whole number from 0
 * @param calendar closed days
 * @example arrivalDay(day("2026-11-25"), 9, []) // 2026-12-04
 */
export function arrivalDay(orderedOn: Day, leadTimeDays: number, calendar: ClosedCalendar): Day {
  return nextOpenDay(addDays(orderedOn, leadTimeDays), calendar);
}

/** How long the stock must last when nothing is ordered today. */
export type ProtectionInterval = {
  /** an order placed at the next check comes on this day */
  readonly until: Day;
  /** days from today until then */
  readonly days: number;
};

/**
 * Protection interval: from today until an order placed at the next check would come. The next check
 * is a review period away, or on the first open day after that.
 *
 * @param today the day of this check
 * @param leadTimeDays days from order to shelf
 * @param reviewDays days from one check to the next, a whole number from 1
 * @param calendar closed days
 * @example protectionInterval(day("2026-11-25"), { leadTimeDays: 9, reviewDays: 7 }, [])
 *   // until 2026-12-11, 16 days
 */
export function protectionInterval(
  today: Day,
  terms: { readonly leadTimeDays: number; readonly reviewDays: number },
  calendar: ClosedCalendar,
): ProtectionInterval {
  const nextCheck = nextOpenDay(addDays(today, terms.reviewDays), calendar);
  const until = arrivalDay(nextCheck, terms.leadTimeDays, calendar);
  return { until, days: daysBetween(today, until) };
}

/**
 * Order-by day: the latest open day on which an order still comes before the run-out day. When that
 * day is past, today.
 *
 * @param runOutDay first day that starts with nothing left, careful estimate
 * @param today never earlier than this
 * @param leadTimeDays days from order to shelf
 * @param calendar closed days
 * @example orderBy(day("2026-12-07"), { today: day("2026-11-25"), leadTimeDays: 9 }, []) // 2026-11-27
 */
export function orderBy(
  runOutDay: Day,
  terms: { readonly today: Day; readonly leadTimeDays: number },
  calendar: ClosedCalendar,
): Day {
  const lastArrival = lastOpenDay(addDays(runOutDay, -1), calendar);
  const latest = lastOpenDay(addDays(lastArrival, -terms.leadTimeDays), calendar);
  return maxDay(latest, terms.today);
}
