import type { Normal } from "#lib/replenishment/exact-policy/normal-stock-cost";
import {
  economicOrderQuantity,
  type LotTerms,
} from "#lib/replenishment/order-quantity/economic-order-quantity";
import { normalQuantile } from "#lib/statistics/normal-quantile";
import { unitNormalLoss } from "#lib/statistics/unit-normal-loss";

const ROUNDS = 1000;
const CLOSE = 1e-12;

/**
 * Reorder point and lot where each unit short costs a sum, however long it is short: the lot pays for the shortages of
 * a cycle beside the order, the reorder point covers the lead time so often that the lot is worth it. Each is reckoned
 * from the other until both stand still.
 *
 * @param terms costs in one currency unit, use in units a year
 * @param shortCost of a unit short, above 0
 * @param leadTime use over the lead time
 * @returns reorder point and lot, not rounded
 * @throws RangeError when a term is out of range, or units short cost too little for the two to stand still
 * @see Hadley and Whitin (1963), Analysis of Inventory Systems, chapter 4 (from memory); published values in
 * tests/reference
 * @example shortUnitReorderLot({ orderCost: 50, holdingCost: 2, yearlyUse: 200 }, 25, { mean: 100, deviation: 25 })
 */
export function shortUnitReorderLot(
  terms: LotTerms,
  shortCost: number,
  leadTime: Normal,
): { readonly reorderPoint: number; readonly lot: number } {
  if (!(shortCost > 0))
    throw new RangeError(`shortUnitReorderLot requires a short cost above 0, got ${shortCost}`);
  let lot = economicOrderQuantity(terms);
  for (let round = 0; round < ROUNDS; round += 1) {
    const shortChance = (lot * terms.holdingCost) / (shortCost * terms.yearlyUse);
    if (!(shortChance < 1)) break;
    const factor = -normalQuantile(shortChance);
    const short = leadTime.deviation * unitNormalLoss(factor);
    const next = economicOrderQuantity({ ...terms, orderCost: terms.orderCost + shortCost * short });
    if (Math.abs(next - lot) <= CLOSE * lot) {
      return { reorderPoint: leadTime.mean + factor * leadTime.deviation, lot: next };
    }
    lot = next;
  }
  throw new RangeError(`shortUnitReorderLot requires a short cost worth holding stock for, got ${shortCost}`);
}
