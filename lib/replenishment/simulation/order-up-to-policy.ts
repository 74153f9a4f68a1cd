import type { OrderUpToLevels } from "#lib/replenishment/exact-policy/order-up-to-levels";
import type { OrderPolicy, PolicyLine } from "#lib/replenishment/simulation/shop-setting";

/** The two levels of a supply. */
export type LevelRule = Pick<OrderUpToLevels, "reorderPoint" | "orderUpTo"> & {
  readonly supplyId: string;
  readonly offerId: string;
  readonly packAmount: number;
};

/**
 * Two levels as a way to order: a supply whose position is at or under its reorder point is ordered up to its upper
 * level, by the fewest whole packs that reach it.
 *
 * @param rules one for each supply
 * @returns the way to order
 * @throws RangeError when a pack is not above 0 or the levels are not in order; later when a supply is not known
 * @example orderUpToPolicy([{ supplyId: "a", offerId: "a", packAmount: 1, reorderPoint: 6, orderUpTo: 40 }])
 */
export function orderUpToPolicy(rules: readonly LevelRule[]): OrderPolicy {
  for (const { supplyId, packAmount, reorderPoint, orderUpTo } of rules) {
    if (!(packAmount > 0 && reorderPoint < orderUpTo)) {
      throw new RangeError(
        `orderUpToPolicy requires a pack above 0 and levels in order of ${supplyId}, ` +
          `got ${packAmount}, ${reorderPoint} and ${orderUpTo}`,
      );
    }
  }
  return ({ supplies }) =>
    rules.flatMap(({ supplyId, offerId, packAmount, reorderPoint, orderUpTo }): PolicyLine[] => {
      const state = supplies.get(supplyId);
      if (state === undefined)
        throw new RangeError(`orderUpToPolicy requires the stock of ${supplyId}, got none`);
      if (state.position > reorderPoint) return [];
      return [{ offerId, packs: Math.ceil((orderUpTo - state.position) / packAmount) }];
    });
}
