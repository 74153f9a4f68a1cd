import { type Amount, amount } from "#lib/units/amount";

const DAYS_A_WEEK = 7;

/** What a reorder point is made of. */
export type ReorderPointQuestion = {
  readonly usePerWeek: Amount;
  /** open days in the protection interval (lead time and review period) */
  readonly openDays: number;
  readonly safetyStock: Amount;
};

/**
 * Reorder point: the position at or under which an order must be placed now, because the next look
 * would come too late.
 *
 * use a week * open days / 7 + safety stock
 *
 * @param question use a week, open days in the protection interval, safety stock
 * @returns the expected use, rounded down to a whole amount, and the reorder point
 * @throws RangeError when a part is below 0
 * @example reorderPoint({ usePerWeek: amountOfUnits(70), openDays: 14, safetyStock: amountOfUnits(30) })
 *   // expected use 140 units, reorder point 170 units
 */
export function reorderPoint(question: ReorderPointQuestion): { expectedUse: Amount; reorderPoint: Amount } {
  const { usePerWeek, openDays, safetyStock } = question;
  if (usePerWeek < 0 || openDays < 0 || safetyStock < 0) {
    throw new RangeError(
      `reorderPoint requires parts from 0, got ${usePerWeek} a week, ${openDays} days and ${safetyStock} safety`,
    );
  }
  // Rounded down so that "position at or under the reorder point" is exactly "the position less the
  // safety stock is used up by then" in whole amounts.
  const expectedUse = amount(Math.floor((usePerWeek * openDays) / DAYS_A_WEEK));
  return { expectedUse, reorderPoint: amount(expectedUse + safetyStock) };
}
