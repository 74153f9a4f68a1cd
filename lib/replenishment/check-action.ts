import type { CheckAction } from "#lib/replenishment/check-row";
import { addDays, type Day } from "#lib/units/day";

/** Orders further off than this are not spoken of. */
const LOOKED_AHEAD_DAYS = 35;

/** What an action is decided from. */
export type CheckActionQuestion = {
  readonly today: Day;
  readonly reviewDays: number;
  /** null when nothing runs out */
  readonly orderByDate: Day | null;
  /** the same without what is on order */
  readonly orderByWithoutArrivals: Day | null;
};

/**
 * Action for a supply whose stock and use are known: by when the order must go out.
 *
 * @param question today, the review period, and the order-by day with and without what is on order
 * @returns what to do
 * @example checkAction({ today: day("2026-11-25"), reviewDays: 7, orderByDate: day("2026-11-27"),
 *   orderByWithoutArrivals: day("2026-11-27") }) // "order-this-week"
 */
export function checkAction(question: CheckActionQuestion): CheckAction {
  const { today, reviewDays, orderByDate, orderByWithoutArrivals } = question;
  const nextCheck = addDays(today, reviewDays);
  const isBefore = (orderBy: Day | null, limit: Day): boolean => orderBy !== null && orderBy < limit;
  if (isBefore(orderByDate, addDays(today, 1))) {
    return "order-today";
  }
  if (isBefore(orderByDate, nextCheck)) {
    return "order-this-week";
  }
  if (isBefore(orderByWithoutArrivals, nextCheck)) {
    return "on-its-way";
  }
  return isBefore(orderByDate, addDays(today, LOOKED_AHEAD_DAYS + 1)) ? "order-later" : "enough";
}
