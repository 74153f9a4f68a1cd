import type { CostedMix } from "#lib/cushioning/purchase/costed-mix";

/** What becomes of a supply, in words. */
export type StockRow = { readonly name: string; readonly cells: readonly string[] };

/** Over the columns of `stockRows`. */
export const STOCK_COLUMNS = ["There and on order", "Bought", "Used", "Left"] as const;

/**
 * What becomes of each supply until the next purchase, so that the packs of a plan can be checked by hand.
 *
 * @param plan its stock
 * @param nameOf a supply's name
 * @param amountOf an amount of a supply in words, from use units
 * @returns what is bought first
 */
export function stockRows(
  { stock }: Pick<CostedMix, "stock">,
  nameOf: (supplyId: string) => string,
  amountOf: (supplyId: string, units: number) => string,
): StockRow[] {
  return stock
    .toSorted((a, b) => Number(b.bought > 0) - Number(a.bought > 0))
    .map(({ supplyId, onHand, bought, used, left }) => ({
      name: nameOf(supplyId),
      cells: [onHand, bought, used, left].map((units) => amountOf(supplyId, Math.round(units))),
    }));
}
