import type { TrialShop, TrialSpan } from "#lib/replenishment/trial/trial-shop";
import { addDays, daysBetween, maxDay } from "#lib/units/day";

const DAYS_A_WEEK = 7;
const COMING_WEEKS = 13;
const YEAR_WEEKS = 52;
/** Weeks of record before the first check of the past, which its forecasts are the mean of. */
export const WEEKS_BEFORE = 8;

/**
 * The weeks to come: 13, today's day the first.
 *
 * @param shop the shop
 * @example comingSpan(shop) // { kind: "coming", firstDay: today, days: 91 }
 */
export function comingSpan({ today }: Pick<TrialShop, "today">): TrialSpan {
  return { kind: "coming", firstDay: today, days: COMING_WEEKS * DAYS_A_WEEK };
}

/**
 * The past year until yesterday, less the eight weeks at the beginning of the records, from which the first check
 * knows what is used a week.
 *
 * @param shop the shop
 * @returns the span, in whole weeks; null where less than 52 weeks are recorded
 * @example pastSpan(shop) // { kind: "past", firstDay: day("2025-11-26"), days: 364 }
 */
export function pastSpan({ today, supplies }: Pick<TrialShop, "today" | "supplies">): TrialSpan | null {
  const first = supplies.find(({ firstDay }) => firstDay !== null)?.firstDay ?? today;
  const yearAgo = addDays(today, -YEAR_WEEKS * DAYS_A_WEEK);
  if (first > yearAgo) return null;
  const from = maxDay(yearAgo, addDays(first, WEEKS_BEFORE * DAYS_A_WEEK));
  const weeks = Math.floor(daysBetween(from, today) / DAYS_A_WEEK);
  return { kind: "past", firstDay: addDays(today, -weeks * DAYS_A_WEEK), days: weeks * DAYS_A_WEEK };
}
