import { countStockCost, type EndCosts } from "#lib/replenishment/exact-policy/count-stock-cost";
import type { GridDistribution } from "#lib/statistics/grid-distribution";

/** A shop that always knows its position, and orders the same lot each time; what is not there is used when it comes. */
export type ReorderLot = {
  readonly reorderPoint: number;
  readonly lot: number;
  /** on average for ever, a unit of time */
  readonly cost: number;
};

/**
 * The best reorder point and lot, in whole units, where units are used one at a time. The lot takes in one level after
 * the other, always the cheaper of the two beside it, as long as the next one costs less than the average.
 *
 * @param costs of an order, above 0; of a unit held and a unit waiting for a unit of time, above 0
 * @param use over the lead time, counted in single units, and the mean use in a unit of time, above 0
 * @returns reorder point and lot, whole, and the cost
 * @throws RangeError when a cost or the use is not above 0
 * @see Federgruen and Zheng (1992), An efficient algorithm for computing an optimal (r, Q) policy in continuous review
 * stochastic inventory systems (from memory); a published value in tests/reference
 * @example countReorderLot({ orderCost: 100, holdingCost: 20, shortageCost: 150 },
 *   { leadTime, perTime: 1.5 }) // for a Poisson use of 3: { reorderPoint: 3, lot: 5, cost: 107.92 }
 */
export function countReorderLot(
  costs: EndCosts & { readonly orderCost: number },
  use: { readonly leadTime: GridDistribution; readonly perTime: number },
): ReorderLot {
  if (!(costs.orderCost > 0 && use.perTime > 0)) {
    throw new RangeError(
      `countReorderLot requires an order cost and a use above 0, got ${costs.orderCost} and ${use.perTime}`,
    );
  }
  const endCost = countStockCost(costs, use.leadTime);
  let top = 0;
  while (endCost(top + 1) < endCost(top)) top += 1;
  let reorderPoint = top - 1;
  let sum = costs.orderCost * use.perTime + endCost(top);
  for (;;) {
    const lot = top - reorderPoint;
    const next = Math.min(endCost(reorderPoint), endCost(top + 1));
    if (next * lot >= sum) return { reorderPoint, lot, cost: sum / lot };
    sum += next;
    if (endCost(reorderPoint) <= endCost(top + 1)) reorderPoint -= 1;
    else top += 1;
  }
}

/**
 * What any reorder point and lot cost on average, in whole units.
 *
 * [K D + sum of the stock cost from r + 1 to r + Q] / Q
 *
 * @param costs of an order; of a unit held and a unit waiting for a unit of time, above 0
 * @param use over the lead time, counted in single units, and the mean use in a unit of time
 * @param levels whole reorder point and lot, the lot from 1
 * @returns currency units a unit of time
 * @throws RangeError when a cost is not above 0 or the levels are not whole
 * @see Federgruen and Zheng (1992) (from memory); a published value in tests/reference
 */
export function countReorderLotCost(
  costs: EndCosts & { readonly orderCost: number },
  use: { readonly leadTime: GridDistribution; readonly perTime: number },
  { reorderPoint, lot }: Pick<ReorderLot, "reorderPoint" | "lot">,
): number {
  if (!(Number.isSafeInteger(reorderPoint) && Number.isSafeInteger(lot) && lot > 0)) {
    throw new RangeError(
      `countReorderLotCost requires a whole reorder point and a lot from 1, got ${reorderPoint} and ${lot}`,
    );
  }
  const endCost = countStockCost(costs, use.leadTime);
  let sum = costs.orderCost * use.perTime;
  for (let level = 1; level <= lot; level += 1) sum += endCost(reorderPoint + level);
  return sum / lot;
}
