import type { ReorderLot } from "#lib/replenishment/exact-policy/count-reorder-lot";
import type { EndCosts } from "#lib/replenishment/exact-policy/count-stock-cost";
import { normalNewsvendor } from "#lib/replenishment/exact-policy/newsvendor";
import {
  type Normal,
  normalStockCost,
  normalStockCostArea,
} from "#lib/replenishment/exact-policy/normal-stock-cost";

const HALVINGS = 200;

/** Costs and a normal use over the lead time. */
export type NormalLotTerms = EndCosts & {
  readonly orderCost: number;
  /** mean use in a unit of time, above 0 */
  readonly perTime: number;
  /** use over the lead time */
  readonly leadTime: Normal;
};

/**
 * What a reorder point and a lot cost on average, for a normal use that goes down evenly.
 *
 * [K D + area of the stock cost from r to r + Q] / Q
 *
 * @param terms costs and use
 * @param levels reorder point and lot, the lot above 0
 * @returns currency units a unit of time
 * @throws RangeError when a cost, the deviation or the lot is not above 0
 * @see Zheng (1992), On properties of stochastic inventory systems, Management Science 38(1) (from memory); published
 * values in tests/reference
 */
export function normalReorderLotCost(
  terms: NormalLotTerms,
  { reorderPoint, lot }: Pick<ReorderLot, "reorderPoint" | "lot">,
): number {
  if (!(lot > 0)) throw new RangeError(`normalReorderLotCost requires a lot above 0, got ${lot}`);
  const area = normalStockCostArea(terms, terms.leadTime, { from: reorderPoint, to: reorderPoint + lot });
  return (terms.orderCost * terms.perTime + area) / lot;
}

/**
 * The best reorder point for a given lot: the stock costs the same just before and just after an order comes.
 *
 * @param terms costs and use
 * @param lot units, above 0
 * @returns units, not rounded
 * @throws RangeError when a cost, the deviation or the lot is not above 0
 * @see Zheng (1992): g(r) = g(r + Q) (from memory)
 */
export function reorderPointForLot(terms: NormalLotTerms, lot: number): number {
  if (!(lot > 0)) throw new RangeError(`reorderPointForLot requires a lot above 0, got ${lot}`);
  const cost = normalStockCost(terms, terms.leadTime);
  const cheapest = normalNewsvendor(terms, terms.leadTime).level;
  return halved(cheapest - lot, cheapest, (level) => cost(level) > cost(level + lot));
}

/**
 * The best reorder point and lot for a normal use over the lead time.
 *
 * @param terms costs and use, the order cost and the use above 0
 * @returns reorder point, lot and cost, not rounded
 * @throws RangeError when a term is not above 0
 * @see Zheng (1992): at the best lot the average cost equals the stock cost at the reorder point (from memory);
 * published values in tests/reference
 * @example normalReorderLot({ orderCost: 8, holdingCost: 0.225, shortageCost: 7.5, perTime: 1300,
 *   leadTime: { mean: 108.3, deviation: 43.3 } }) // { reorderPoint: 126.9, lot: 328.4, cost: 78.07 }
 */
export function normalReorderLot(terms: NormalLotTerms): ReorderLot {
  if (!(terms.orderCost > 0 && terms.perTime > 0)) {
    throw new RangeError(
      `normalReorderLot requires an order cost and a use above 0, got ${terms.orderCost} and ${terms.perTime}`,
    );
  }
  const cost = normalStockCost(terms, terms.leadTime);
  const isSmall = (tried: number): boolean => {
    const point = reorderPointForLot(terms, tried);
    return normalReorderLotCost(terms, { reorderPoint: point, lot: tried }) > cost(point);
  };
  let most = terms.leadTime.deviation;
  while (isSmall(most)) most *= 2;
  const lot = halved(0, most, isSmall);
  const reorderPoint = reorderPointForLot(terms, lot);
  return { reorderPoint, lot, cost: normalReorderLotCost(terms, { reorderPoint, lot }) };
}

/** The point between two where something stops to hold. */
function halved(from: number, to: number, holds: (at: number) => boolean): number {
  let [low, high] = [from, to];
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return high;
}
