import { economicOrderQuantity } from "#lib/replenishment/order-quantity/economic-order-quantity";
import { checkSteps, goodsCostOf, type PriceSteps } from "#lib/replenishment/order-quantity/price-steps";

/** What a lot with price breaks costs to order and to hold. */
export type PriceBreakTerms = {
  readonly orderCost: number;
  /** cost of holding for a year as a share of what the goods cost, above 0 */
  readonly holdingShare: number;
  readonly yearlyUse: number;
  readonly prices: PriceSteps;
};

/** The best lot with price breaks. */
export type PriceBreakLot = {
  readonly lot: number;
  /** which step the lot lies in, from 0 */
  readonly step: number;
  /** goods, ordering and holding, a year */
  readonly cost: number;
};

/**
 * The lot with price breaks that costs least in goods, ordering and holding: the best lot within each step, and of
 * these the cheapest. In a step of all-units prices the economic order quantity at that price, moved into the step;
 * with incremental prices the order cost is raised by what the units below the step cost more than in it.
 *
 * @param terms costs in one currency unit, use in units a year, above 0; prices above 0
 * @returns lot in units, not rounded, its step and cost a year; between equals the smaller lot
 * @throws RangeError when a term is out of range
 * @see Nahmias, Production and Operations Analysis, quantity discounts (from memory); published values in
 * tests/reference
 * @example priceBreakLot({ orderCost: 8, holdingShare: 0.3, yearlyUse: 1300, prices: { pricing: "all-units",
 *   steps: [{ from: 0, price: 0.75 }, { from: 400, price: 0.72 }, { from: 800, price: 0.68 }] } }).lot // 800
 */
export function priceBreakLot(terms: PriceBreakTerms): PriceBreakLot {
  const { orderCost, holdingShare, yearlyUse, prices } = terms;
  checkSteps(prices);
  if (!(yearlyUse > 0)) throw new RangeError(`priceBreakLot requires a use above 0, got ${yearlyUse}`);
  let best: PriceBreakLot | null = null;
  for (const [step, { from, price }] of prices.steps.entries()) {
    const before = prices.pricing === "all-units" ? 0 : goodsCostOf(prices, from) - price * from;
    const free = economicOrderQuantity({
      orderCost: orderCost + before,
      holdingCost: holdingShare * price,
      yearlyUse,
    });
    const lot = Math.max(from, free);
    if (lot <= 0 || lot >= (prices.steps[step + 1]?.from ?? Infinity)) continue;
    const goods = goodsCostOf(prices, lot);
    const cost = ((orderCost + goods) * yearlyUse) / lot + (holdingShare * goods) / 2;
    if (best === null || cost < best.cost) best = { lot, step, cost };
  }
  if (best === null) throw new RangeError(`priceBreakLot requires an order cost above 0, got ${orderCost}`);
  return best;
}
