import { deliveryCharge } from "#lib/replenishment/order-quantity/order-limits";
import type { OrderPacksQuestion } from "#lib/replenishment/order-quantity/order-packs-question";
import { goodsCostOf } from "#lib/replenishment/order-quantity/price-steps";

/** Weeks in a year of 365.25 days. */
export const WEEKS_A_YEAR = 365.25 / 7;

/** What buying in orders of one size costs: one order, and a year at the present use. Minor units, not rounded. */
export type OrderCosts = {
  /** goods of one order */
  readonly goods: number;
  /** delivery of one order */
  readonly delivery: number;
  /** weeks that one order lasts */
  readonly weeks: number;
  readonly yearly: {
    readonly goods: number;
    readonly delivery: number;
    /** the seller's own work on orders */
    readonly ordering: number;
    /** of the order's average stock, half of it */
    readonly holding: number;
    readonly total: number;
  };
};

/**
 * What a year costs when every order has so many packs. "A year" is only the measure that all sizes are compared by:
 * a week's use times the weeks of a year, as if it went on. The order itself bets no further than it lasts.
 *
 * @param question terms of the order, with a use above 0
 * @param packs whole, from 1
 * @returns the parts and their sum
 * @see Harris (1913): goods + orders + holding half a lot (from memory)
 */
export function orderCosts(question: OrderPacksQuestion, packs: number): OrderCosts {
  const goods = goodsCostOf(question.prices, packs);
  const delivery = deliveryCharge(question, goods);
  const weeks = (packs * question.packAmount) / question.usePerWeek;
  const orders = WEEKS_A_YEAR / weeks;
  const holding = (question.holdingShare * goods) / 2;
  const yearly = {
    goods: goods * orders,
    delivery: delivery * orders,
    ordering: question.orderCost * orders,
    holding,
  };
  return { goods, delivery, weeks, yearly: { ...yearly, total: yearlyTotal(question, packs) } };
}

/** The total of `orderCosts` alone: for loops over many sizes. */
export function yearlyTotal(question: OrderPacksQuestion, packs: number): number {
  const goods = goodsCostOf(question.prices, packs);
  const orders = (question.usePerWeek * WEEKS_A_YEAR) / (packs * question.packAmount);
  return (
    (goods + deliveryCharge(question, goods) + question.orderCost) * orders +
    (question.holdingShare * goods) / 2
  );
}
