import { goodsCost } from "#lib/replenishment/order-quantity/price-steps";
import type {
  OrderPolicy,
  PolicyLine,
  ShopOffer,
  ShopSupplier,
  SupplyState,
} from "#lib/replenishment/simulation/shop-setting";
import type { CheckLevels } from "#lib/replenishment/trial/check-levels";

/** What a supply is ordered by. */
export type LevelsRule = {
  readonly offer: ShopOffer;
  /** the checks in order */
  readonly checks: readonly CheckLevels[];
};

/**
 * The weekly check's suggestion as a way to order: a supply is due when what is on hand and comes in time is at or
 * under its reorder point; it is ordered by the fewest whole packs, at least one, that lift all that is on hand and on
 * order to its upper level. An order that a supplier would not send for its least value grows, each line alike, until
 * it would: the weekly check leaves that to the seller.
 *
 * @param rules one for each supply
 * @param shop days between checks, the first on day 0, and the suppliers' terms
 * @returns the way to order
 * @throws RangeError later, when a supply is not known or there is no level for a check
 */
export function checkLevelsPolicy(
  rules: readonly LevelsRule[],
  shop: { readonly reviewDays: number; readonly suppliers: readonly ShopSupplier[] },
): OrderPolicy {
  return ({ day, supplies }) => {
    const lines = rules.flatMap(({ offer, checks }) => {
      const state = supplies.get(offer.supplyId);
      const levels = checks[day / shop.reviewDays];
      if (state === undefined || levels === undefined) {
        throw new RangeError(
          `checkLevelsPolicy requires stock and levels of ${offer.supplyId} on day ${day}`,
        );
      }
      const packs = packsToOrder(state, levels, offer.packAmount);
      return packs === 0 ? [] : [{ offer, packs }];
    });
    return shop.suppliers.flatMap(({ supplierId, leastValue }): PolicyLine[] => {
      const own = lines.filter(({ offer }) => offer.supplierId === supplierId);
      return atLeastValue(own, leastValue ?? 0).map(({ offer, packs }) => ({
        offerId: offer.offerId,
        packs,
      }));
    });
  };
}

function packsToOrder(state: SupplyState, levels: CheckLevels, packAmount: number): number {
  const late = state.onOrder
    .filter(({ expectedDay }) => expectedDay > levels.untilDay)
    .reduce((sum, { amount }) => sum + amount, 0);
  if (state.position - late > levels.reorderPoint) return 0;
  return Math.max(1, Math.ceil((levels.orderUpTo - state.position) / packAmount));
}

type OrderLine = { readonly offer: ShopOffer; readonly packs: number };

/** Price breaks can make a larger order cheaper, so the growing goes on until the value is reached. */
function atLeastValue(lines: readonly OrderLine[], leastValue: number): readonly OrderLine[] {
  const value = (of: readonly OrderLine[]): number =>
    of.reduce((sum, { offer, packs }) => sum + goodsCost(offer.prices, packs), 0);
  let grown = lines;
  let worth = value(grown);
  // Where all of it is free, no number of packs would reach the value.
  while (worth > 0 && worth < leastValue) {
    const factor = leastValue / worth;
    grown = grown.map(({ offer, packs }) => ({
      offer,
      packs: Math.max(packs + 1, Math.ceil(packs * factor)),
    }));
    worth = value(grown);
  }
  return worth < leastValue ? [] : grown;
}
