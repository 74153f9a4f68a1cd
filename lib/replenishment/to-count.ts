import type { CheckRow } from "#lib/replenishment/check-row";
import { type Day, daysBetween } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";

/** A supply to count, and why. */
export type ToCount = { readonly supplyId: string; readonly reason: string };

/** A book older than this may have drifted; common practice, no source. */
const OLD_COUNT_DAYS = 28;

/**
 * What to count: supplies without a stock figure, then those about to be ordered whose last count is old.
 *
 * @param rows rows of the check, most urgent first
 * @param today the day of the check
 * @returns supplies with the reason, those without a figure first
 * @example toCount([], day("2026-11-25")) // []
 */
export function toCount(rows: readonly CheckRow[], today: Day): ToCount[] {
  const unknown = rows.flatMap((row): ToCount[] => {
    if (row.action !== "count") {
      return [];
    }
    return [
      { supplyId: row.supplyId, reason: row.onHand === null ? "never counted" : "the book is below zero" },
    ];
  });
  const old = rows.flatMap((row): ToCount[] => {
    const isUrgent = row.action === "order-today" || row.action === "order-this-week";
    if (!isUrgent || row.countedOn === null || daysBetween(row.countedOn, today) <= OLD_COUNT_DAYS) {
      return [];
    }
    const counted = formatDay(row.countedOn, { year: daysBetween(row.countedOn, today) >= 300 });
    return [{ supplyId: row.supplyId, reason: `last counted ${counted}; a count could change the order` }];
  });
  return [...unknown, ...old];
}
