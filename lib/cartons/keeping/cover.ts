/** Weeks in a month of a year of 52 weeks. */
export const WEEKS_PER_MONTH = 52 / 12;

/** How long stock lasts at a rate of use. */
export type Cover = { readonly weeks: number; readonly months: number };

/**
 * How long what is there and what is on its way lasts: (on hand + on order) / weekly use.
 *
 * @param stock amounts in one unit, on order from zero; what is short counts as nothing there
 * @returns weeks and months, or null where nothing was used
 * @throws RangeError if use or on order is below zero or no number
 * @example cover({ onHand: 900, onOrder: 0, weeklyUse: 30 }) // 30 weeks, 6.92 months
 */
export function cover(stock: {
  readonly onHand: number;
  readonly onOrder: number;
  readonly weeklyUse: number;
}): Cover | null {
  const { onHand, onOrder, weeklyUse } = stock;
  if (!(weeklyUse >= 0 && onOrder >= 0 && Number.isFinite(onHand + onOrder + weeklyUse))) {
    throw new RangeError(`cover requires a use and an order from zero, got ${JSON.stringify(stock)}`);
  }
  if (weeklyUse === 0) return null;
  const weeks = Math.max(0, onHand + onOrder) / weeklyUse;
  return { weeks, months: weeks / WEEKS_PER_MONTH };
}
