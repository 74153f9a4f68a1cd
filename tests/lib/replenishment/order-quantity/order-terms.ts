import type { OrderPacksQuestion } from "#lib/replenishment/order-quantity/order-packs-question";

/** A roll of 100 at 2000 minor units, 25 used a week, delivery 600, a quarter of the value a year to hold; no limit. */
export function orderTerms(changes: Partial<OrderPacksQuestion> = {}): OrderPacksQuestion {
  return {
    packAmount: 100,
    prices: { steps: [{ from: 0, price: 2000 }], pricing: "all-units" },
    leastPacks: null,
    leastValue: null,
    mostPacks: null,
    delivery: { charge: 600, freeFrom: null },
    orderCost: 0,
    holdingShare: 0.25,
    usePerWeek: 25,
    stockOnArrival: 0,
    cash: null,
    room: null,
    shelfLifeDays: null,
    longestCoverWeeks: null,
    daysUntilEnd: null,
    ...changes,
  };
}
