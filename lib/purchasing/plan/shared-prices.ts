import type { PlanChoice } from "#lib/purchasing/plan/plan-choice";
import type { SharedOrder } from "#lib/purchasing/plan/shared-orders";

/** Prices at which orders, cash and room are shared among the supplies; all at least 0. */
export type SharedPrices = {
  /** by slot: its part of its order's delivery and handling, minor units */
  readonly part: Float64Array;
  /** by order: what a minor unit of goods is worth for free delivery */
  readonly free: Float64Array;
  /** by order: what a minor unit of goods is worth for the least order */
  readonly least: Float64Array;
  /** by cash limit: for each minor unit */
  readonly cash: Float64Array;
  /** by week: for each litre right after arrivals, minor units */
  readonly litre: Float64Array;
};

/** The kinds of prices. */
export const PRICE_KINDS = ["part", "free", "least", "cash", "litre"] as const;

/**
 * Prices to begin with: an order's charge is shared by the lines of a known plan that are in it, or where it is
 * not placed by all that could be.
 *
 * @param orders every order that could be placed
 * @param choice a known plan
 * @param counts number of slots, cash limits and weeks
 * @returns prices
 */
export function firstPrices(
  orders: readonly SharedOrder[],
  choice: PlanChoice,
  counts: { readonly slots: number; readonly cash: number; readonly weeks: number },
): SharedPrices {
  const lines = new Set(choice.lines.map(({ offerId, week }) => `${week} ${offerId}`));
  const part = new Float64Array(counts.slots);
  for (const { supplier, slots } of orders) {
    const users = slots.filter(({ offer, week }) => lines.has(`${week} ${offer.id}`));
    const sharing = users.length > 0 ? users : slots;
    const charge = supplier.deliveryMinor + supplier.handlingMinor;
    for (const { number } of sharing) part[number] = charge / sharing.length;
  }
  return {
    part,
    free: new Float64Array(orders.length),
    least: new Float64Array(orders.length),
    cash: new Float64Array(counts.cash),
    litre: new Float64Array(counts.weeks),
  };
}
