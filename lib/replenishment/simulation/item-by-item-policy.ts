import { orderPacks } from "#lib/replenishment/order-quantity/order-packs";
import type { OrderPacksQuestion } from "#lib/replenishment/order-quantity/order-packs-question";
import type { OrderPolicy } from "#lib/replenishment/simulation/shop-setting";
import { type CheckRule, weeklyCheckPolicy } from "#lib/replenishment/simulation/weekly-check-policy";

/** A supply that is ordered by itself. */
export type ItemRule = Pick<CheckRule, "supplyId" | "offerId" | "reorderPoint"> & {
  readonly question: OrderPacksQuestion;
};

/**
 * Item by item, to compare: each supply has the order quantity that would be best if it bore the whole delivery charge,
 * as if nothing else came with it. Supplies that happen to be due at one check still share a delivery.
 *
 * @param rules one for each supply; what is not used is never ordered
 * @returns the way to order
 * @throws RangeError when the terms allow no order of a supply
 * @example itemByItemPolicy([{ supplyId: "paper", offerId: "ream", reorderPoint: () => 300, question }])
 */
export function itemByItemPolicy(rules: readonly ItemRule[]): OrderPolicy {
  return weeklyCheckPolicy(
    rules.flatMap(({ question, ...rule }) => {
      const found = orderPacks(question);
      if (found.kind === "no-order") {
        throw new RangeError(
          `itemByItemPolicy requires terms that allow an order of ${rule.supplyId}, got limits ${found.limits.join(", ")}`,
        );
      }
      return found.kind === "order" ? [{ ...rule, packAmount: question.packAmount, packs: found.packs }] : [];
    }),
  );
}
