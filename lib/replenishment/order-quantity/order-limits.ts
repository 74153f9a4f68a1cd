import type { OrderLimit, OrderPacksQuestion } from "#lib/replenishment/order-quantity/order-packs-question";
import { goodsCostOf } from "#lib/replenishment/order-quantity/price-steps";

const DAYS_A_WEEK = 7;
/** Rounding must not cost a pack: seven times a seventh of a week's use is a week's use. */
const NEARLY = 1e-9;

/**
 * Most packs that each limit allows by itself; limits that are not set, and those that depend on prices, left out.
 * Under a planned end the last pack may stay partly unused, as packs come whole; a pack that would not be begun is
 * too many.
 *
 * @param question terms of the order, with a use above 0
 * @returns whole packs from 0 for each limit
 */
export function mostPacksByLimit(question: OrderPacksQuestion): Map<OrderLimit, number> {
  const { packAmount, usePerWeek, stockOnArrival, room, shelfLifeDays, longestCoverWeeks, daysUntilEnd } =
    question;
  const usedIn = (days: number): number => (usePerWeek * days) / DAYS_A_WEEK;
  const packsFor = (amount: number): number => (amount - stockOnArrival) / packAmount;
  const most = new Map<OrderLimit, number>();
  if (shelfLifeDays !== null) most.set("shelf-life", wholeBelow(packsFor(usedIn(shelfLifeDays))));
  if (longestCoverWeeks !== null) {
    most.set("longest-cover", wholeBelow(packsFor(usedIn(longestCoverWeeks * DAYS_A_WEEK))));
  }
  if (daysUntilEnd !== null) {
    most.set("planned-end", Math.max(0, Math.ceil(packsFor(usedIn(daysUntilEnd)) - NEARLY)));
  }
  if (room !== null && room.litresPerPack > 0) {
    most.set("room", wholeBelow(room.litres / room.litresPerPack));
  }
  if (question.mostPacks !== null) most.set("largest-order", wholeBelow(question.mostPacks));
  return most;
}

/**
 * The limits that an order of so many packs breaks.
 *
 * @param question terms of the order
 * @param most from `mostPacksByLimit` of the same question
 * @param packs whole, from 1
 * @returns the limits, none when the order is allowed
 */
export function brokenLimits(
  question: OrderPacksQuestion,
  most: ReadonlyMap<OrderLimit, number>,
  packs: number,
): OrderLimit[] {
  const broken: OrderLimit[] = [];
  for (const [limit, allowed] of most) if (packs > allowed) broken.push(limit);
  const goods = goodsCostOf(question.prices, packs);
  if (question.cash !== null && goods + deliveryCharge(question, goods) > question.cash) broken.push("cash");
  if (packs < (question.leastPacks ?? 1) || goods < (question.leastValue ?? 0)) broken.push("least-order");
  return broken;
}

/**
 * What the delivery of an order costs.
 *
 * @param question terms of the order
 * @param goods value of its goods
 * @returns minor units, 0 where the value makes it free
 */
export function deliveryCharge({ delivery }: Pick<OrderPacksQuestion, "delivery">, goods: number): number {
  return delivery.freeFrom !== null && goods >= delivery.freeFrom ? 0 : delivery.charge;
}

function wholeBelow(packs: number): number {
  return Math.max(0, Math.floor(packs + NEARLY));
}
