import type { PriceSteps } from "#lib/replenishment/order-quantity/price-steps";

/** What the size of an order of one offer is decided by. Amounts in one unit, money in minor units. */
export type OrderPacksQuestion = {
  /** what one pack holds, above 0 */
  readonly packAmount: number;
  /** price of a pack, steps counted in packs */
  readonly prices: PriceSteps;
  /** fewest packs that the supplier sends, from 1; null for any */
  readonly leastPacks: number | null;
  /** least value of goods that the supplier sends, after price breaks; null for any */
  readonly leastValue: number | null;
  /** most packs that the supplier sends at once; null for any */
  readonly mostPacks: number | null;
  /** for each order, and none from that value of goods on, as far as this line alone reaches it; null: never free */
  readonly delivery: { readonly charge: number; readonly freeFrom: number | null };
  /** what an order costs the seller beside the delivery: the time to place, receive and put away */
  readonly orderCost: number;
  /** cost of holding stock for a year as a share of what the goods cost, from 0 */
  readonly holdingShare: number;
  /** use a week as it is now, from 0 */
  readonly usePerWeek: number;
  /** what will still be in stock when the order comes, from 0 */
  readonly stockOnArrival: number;
  /** money that may be spent on this order, delivery counted in; null: no limit */
  readonly cash: number | null;
  /** litres free for it, and what one pack takes; null: not known, no limit */
  readonly room: { readonly litres: number; readonly litresPerPack: number } | null;
  /** days from arrival until a pack is past use; null: it keeps */
  readonly shelfLifeDays: number | null;
  /** stock on arrival and the order may last this long together; null: no limit */
  readonly longestCoverWeeks: number | null;
  /** days from arrival until the supply is no longer used; null: no end planned */
  readonly daysUntilEnd: number | null;
};

/** What can forbid an order's size. */
export type OrderLimit =
  | "shelf-life"
  | "longest-cover"
  | "planned-end"
  | "room"
  | "cash"
  | "largest-order"
  | "least-order";

/**
 * Checks the terms of an order.
 *
 * @throws RangeError naming the term that is out of range
 */
export function checkOrderPacksQuestion(question: OrderPacksQuestion): void {
  const { packAmount, delivery, room } = question;
  if (!(packAmount > 0 && Number.isFinite(packAmount))) {
    throw new RangeError(`orderPacks requires a pack above 0, got ${packAmount}`);
  }
  for (const [name, value] of Object.entries({
    leastPacks: question.leastPacks,
    leastValue: question.leastValue,
    mostPacks: question.mostPacks,
    charge: delivery.charge,
    freeFrom: delivery.freeFrom,
    orderCost: question.orderCost,
    holdingShare: question.holdingShare,
    usePerWeek: question.usePerWeek,
    stockOnArrival: question.stockOnArrival,
    cash: question.cash,
    litres: room?.litres ?? null,
    litresPerPack: room?.litresPerPack ?? null,
    shelfLifeDays: question.shelfLifeDays,
    longestCoverWeeks: question.longestCoverWeeks,
    daysUntilEnd: question.daysUntilEnd,
  })) {
    if (value !== null && !(value >= 0 && Number.isFinite(value))) {
      throw new RangeError(`orderPacks requires ${name} from 0, got ${value}`);
    }
  }
}
