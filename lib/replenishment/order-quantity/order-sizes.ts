import { WEEKS_A_YEAR } from "#lib/replenishment/order-quantity/order-costs";
import type { OrderLimit, OrderPacksQuestion } from "#lib/replenishment/order-quantity/order-packs-question";

/** More sizes than this are not tried one by one. */
const MOST_SIZES = 1_000_000;

/**
 * A size of order beyond which none is cheaper, and at which every least size and value is reached. Past all steps and
 * thresholds the cost is that of one price, which rises from its economic order quantity on. Where holding costs nothing
 * it never rises; then one pack beyond what the limits allow.
 *
 * @param question terms of the order, with a use above 0
 * @param most from `mostPacksByLimit` of the same question
 * @returns packs, a whole number from 1
 * @throws RangeError when that is more than a million packs, or when neither holding costs nor a limit end the search
 * @example sizesToTry(question, mostPacksByLimit(question)) // 12
 */
export function sizesToTry(question: OrderPacksQuestion, most: ReadonlyMap<OrderLimit, number>): number {
  const { prices, delivery, orderCost, leastPacks, leastValue, packAmount, usePerWeek } = question;
  const last = prices.steps.at(-1) ?? { from: 0, price: 0 };
  const thresholds = [last.from, leastPacks ?? 1];
  const cheap = Math.min(...prices.steps.map(({ price }) => price));
  if (cheap > 0) {
    for (const value of [delivery.freeFrom, leastValue]) thresholds.push(Math.ceil((value ?? 0) / cheap) + 1);
  }
  const dearest = Math.max(...prices.steps.map(({ price }) => price));
  // Of incremental prices, the units below the last step cost more than its price: as if each order cost that more.
  const before = prices.pricing === "all-units" ? 0 : dearest * last.from;
  const fixed = orderCost + delivery.charge + before;
  const held = question.holdingShare * last.price;
  const yearlyPacks = (usePerWeek * WEEKS_A_YEAR) / packAmount;
  const sizes = Math.ceil(Math.max(turn(), ...thresholds)) + 1;
  if (sizes > MOST_SIZES) {
    throw new RangeError(`orderPacks requires packs of which at most ${MOST_SIZES} are bought, got ${sizes}`);
  }
  return sizes;

  function turn(): number {
    if (fixed === 0) return 1;
    return held > 0 ? Math.sqrt((2 * fixed * yearlyPacks) / held) : lastAllowed(question, most, cheap);
  }
}

function lastAllowed(
  question: OrderPacksQuestion,
  most: ReadonlyMap<OrderLimit, number>,
  cheap: number,
): number {
  const paid = question.cash !== null && cheap > 0 ? question.cash / cheap : Infinity;
  const allowed = Math.min(paid, ...most.values());
  if (allowed === Infinity) {
    throw new RangeError(
      `orderPacks requires a limit where holding costs nothing, got a holding share of ${question.holdingShare}`,
    );
  }
  return allowed;
}
