import { type ClosedCalendar, nextOpenDay } from "#lib/forecast/open-days";
import { addDays, type Day, weekday } from "#lib/units/day";

/** What a supplier promises, and on which days it works. */
export type DeliveryTerms = {
  /** from an order to its delivery, a whole number from 0 */
  readonly promisedDays: number;
  /** whether these are days on which the supplier works, Monday to Friday but for its closed days */
  readonly inWorkingDays: boolean;
  /** weekdays on which it takes orders, 1 Monday to 7 Sunday, at least one */
  readonly orderDays: readonly number[];
  /** days on which it neither packs nor sends */
  readonly closed: ClosedCalendar;
  /** a time of the year in which it takes longer, "MM-DD" both included; may reach over the year's end */
  readonly peak: { readonly from: string; readonly to: string; readonly extraDays: number } | null;
};

const SATURDAY = 6;
const MONTH_AT = 5;

/**
 * Terms of a supplier that works and takes orders every day.
 *
 * @param promisedDays from an order to its delivery
 * @example plainTerms(9).promisedDays // 9
 */
export function plainTerms(promisedDays: number): DeliveryTerms {
  return { promisedDays, inWorkingDays: false, orderDays: [1, 2, 3, 4, 5, 6, 7], closed: [], peak: null };
}

/**
 * The day that a supplier promises for an order: it begins on the next day on which the supplier takes orders, and
 * takes the promised days from there, more of them at its peak.
 *
 * @param orderedOn the day the order is placed, before the supplier's cut-off
 * @param terms what the supplier promises
 * @returns the promised day of delivery
 * @throws RangeError when it takes orders on no day of the week
 * @example promisedDay(day("2026-11-25"), plainTerms(9)) // 2026-12-04
 */
export function promisedDay(orderedOn: Day, terms: DeliveryTerms): Day {
  if (terms.orderDays.length === 0) throw new RangeError("promisedDay requires a day for orders, got none");
  const begun = firstOrderDay(orderedOn, terms);
  const days = terms.promisedDays + (isAtPeak(begun, terms.peak) ? (terms.peak?.extraDays ?? 0) : 0);
  return terms.inWorkingDays ? afterWorkingDays(begun, days, terms) : addDays(begun, days);
}

function firstOrderDay(from: Day, { orderDays, closed }: DeliveryTerms): Day {
  let reached = nextOpenDay(from, closed);
  while (!orderDays.includes(weekday(reached))) reached = nextOpenDay(addDays(reached, 1), closed);
  return reached;
}

function afterWorkingDays(from: Day, days: number, { closed }: DeliveryTerms): Day {
  let reached = from;
  for (let left = days; left > 0; ) {
    reached = nextOpenDay(addDays(reached, 1), closed);
    if (weekday(reached) < SATURDAY) left -= 1;
  }
  return reached;
}

function isAtPeak(on: Day, peak: DeliveryTerms["peak"]): boolean {
  if (peak === null) return false;
  const date = on.slice(MONTH_AT);
  return peak.from <= peak.to ? peak.from <= date && date <= peak.to : date >= peak.from || date <= peak.to;
}
