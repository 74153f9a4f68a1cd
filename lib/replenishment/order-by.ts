import { type ClosedCalendar, lastOpenDay } from "#lib/forecast/open-days";
import { arrivalChances } from "#lib/replenishment/lead-time/arrival-chances";
import type { SupplierDelivery } from "#lib/replenishment/lead-time/supplier-delivery";
import { chanceToLast, type RunOut, type RunOutQuestion } from "#lib/replenishment/run-out";
import { addDays, type Day, daysBetween, maxDay } from "#lib/units/day";

/** What a day for an order is asked of. */
export type OrderByQuestion = Pick<RunOutQuestion, "today" | "forecast" | "calendar"> & {
  readonly delivery: SupplierDelivery;
  /** the careful run-out day, and what is counted until then */
  readonly runOut: RunOut;
  /** wanted chance that stock lasts until the delivery */
  readonly level: number;
};

/**
 * Chance that stock lasts until an order placed on a day has come.
 *
 * @param orderedOn the day the order is placed
 * @param question the forecast, the supplier and what is counted
 * @returns from 0 to 1
 */
export function chanceUntilDelivery(orderedOn: Day, question: OrderByQuestion): number {
  const { delivery, calendar, runOut } = question;
  const chances = arrivalChances(orderedOn, delivery, calendar).reduce(
    (sum, { day, chance }) => sum + chance * chanceToLast(question, day, runOut.counted),
    0,
  );
  return Math.min(1, chances);
}

/**
 * Order-by day: the last open day on which an order still comes before stock ends, with the wanted chance. When that
 * day is past, today.
 *
 * @param question the forecast, the supplier, the careful run-out day and the level
 * @returns the day; null when stock lasts for ten years
 */
export function orderBy(question: OrderByQuestion): Day | null {
  const { today, calendar, runOut, level } = question;
  if (runOut.day === null) return null;
  // Surely too late on the careful day itself, unless a delivery takes no time.
  let low = 0;
  let high = Math.max(0, daysBetween(today, runOut.day)) + 1;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (chanceUntilDelivery(addDays(today, middle), question) >= level) low = middle;
    else high = middle;
  }
  return openDayUntil(addDays(today, low), today, calendar);
}

/** The last open day until then, or today. */
function openDayUntil(last: Day, today: Day, calendar: ClosedCalendar): Day {
  return maxDay(lastOpenDay(last, calendar), today);
}
