import type { OrderPolicy, PolicyLine } from "#lib/replenishment/simulation/shop-setting";

/** When and how much one supply is ordered. */
export type CheckRule = {
  readonly supplyId: string;
  readonly offerId: string;
  readonly packAmount: number;
  /** on a day, counted from 0, so that it may follow the season */
  readonly reorderPoint: (day: number) => number;
  /** packs to order, from 1 */
  readonly packs: number;
};

/**
 * The weekly check as a way to order: a supply whose position is at or under its reorder point is ordered, its order
 * quantity, or more where that would leave it under.
 *
 * @param rules one for each supply
 * @returns the way to order
 * @throws RangeError when a pack is not above 0 or packs are not whole from 1; later when a supply is not known
 * @example weeklyCheckPolicy([{ supplyId: "paper", offerId: "ream", packAmount: 500, reorderPoint: () => 300, packs: 2 }])
 */
export function weeklyCheckPolicy(rules: readonly CheckRule[]): OrderPolicy {
  for (const { offerId, packAmount, packs } of rules) {
    if (!(packAmount > 0 && Number.isSafeInteger(packs) && packs > 0)) {
      throw new RangeError(
        `weeklyCheckPolicy requires packs from 1 of ${offerId}, got ${packs} of ${packAmount}`,
      );
    }
  }
  return ({ day, supplies }) =>
    rules.flatMap(({ supplyId, offerId, packAmount, reorderPoint, packs }): PolicyLine[] => {
      const state = supplies.get(supplyId);
      if (state === undefined)
        throw new RangeError(`weeklyCheckPolicy requires the stock of ${supplyId}, got none`);
      const below = reorderPoint(day) - state.position;
      if (below < 0) return [];
      const toBeAbove = Math.floor(below / packAmount) + 1;
      return [{ offerId, packs: Math.max(packs, toBeAbove) }];
    });
}
