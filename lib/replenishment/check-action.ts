import type { CheckAction } from "#lib/replenishment/check-row";
import { addDays, type Day } from "#lib/units/day";

/** Orders further off than this are not spoken of. */
const LOOKED_AHEAD_DAYS = 35;

/** What an action is decided from. */
export type CheckActionQuestion = {
  readonly today: Day;
  /** whether the position is at or under the reorder point */
  readonly isDue: boolean;
  /** the same without what is on order */
  readonly isDueWithoutArrivals: boolean;
  /** null when nothing runs out */
  readonly orderByDate: Day | null;
};

/**
 * Action for a supply whose stock and use are known.
 *
 * @param question today, the position against the reorder point, and the order-by day
 * @returns what to do
 * @example checkAction({ today: day("2026-11-25"), isDue: true, isDueWithoutArrivals: true,
 *   orderByDate: day("2026-11-27") }) // "order-this-week"
 */
export function checkAction(question: CheckActionQuestion): CheckAction {
  const { today, isDue, isDueWithoutArrivals, orderByDate } = question;
  if (isDue) return orderByDate !== null && orderByDate > today ? "order-this-week" : "order-today";
  if (isDueWithoutArrivals) return "on-its-way";
  return orderByDate !== null && orderByDate <= addDays(today, LOOKED_AHEAD_DAYS) ? "order-later" : "enough";
}
