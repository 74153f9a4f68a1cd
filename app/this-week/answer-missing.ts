import type { CheckRow } from "#lib/replenishment/weekly-check";

/**
 * Whether the check can say nothing yet: no supply has both a count and a use. A new shop is then led on.
 *
 * @param rows - the rows of the weekly check
 * @returns true where no row could have a date
 * @example isAnswerMissing([]) // true
 */
export function isAnswerMissing(rows: readonly Pick<CheckRow, "onHand" | "usePerWeek">[]): boolean {
  return rows.every((row) => row.onHand === null || row.usePerWeek === null);
}
