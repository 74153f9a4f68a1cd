/** Prices of a unit (or a pack) by how many are bought at once. */
export type PriceSteps = {
  /** price from so many units on; the first from 0, rising */
  readonly steps: readonly { readonly from: number; readonly price: number }[];
  /** whether the price of the highest step reached holds for all units, or each step's only for the units within it */
  readonly pricing: "all-units" | "incremental";
};

/**
 * What a lot costs to buy.
 *
 * @param prices steps of the price
 * @param lot units, from 0
 * @returns currency units
 * @throws RangeError when there is no step from 0 or the steps do not rise
 * @example goodsCost({ steps: [{ from: 0, price: 5 }, { from: 4, price: 4 }], pricing: "all-units" }, 6) // 24
 */
export function goodsCost(prices: PriceSteps, lot: number): number {
  checkSteps(prices);
  return goodsCostOf(prices, lot);
}

/** As `goodsCost`, for steps that have been checked: for loops over many lots. */
export function goodsCostOf({ steps, pricing }: PriceSteps, lot: number): number {
  let cost = 0;
  steps.forEach(({ from, price }, index) => {
    if (lot < from) return;
    if (pricing === "all-units") cost = price * lot;
    else cost += price * (Math.min(lot, steps[index + 1]?.from ?? Infinity) - from);
  });
  return cost;
}

/**
 * Checks that steps begin at 0 and rise, with prices from 0.
 *
 * @throws RangeError when they do not
 */
export function checkSteps({ steps }: PriceSteps): void {
  if (steps[0]?.from !== 0)
    throw new RangeError(`checkSteps requires a first step from 0, got ${steps[0]?.from}`);
  let before = -1;
  for (const { from, price } of steps) {
    if (!(from > before && price >= 0)) {
      throw new RangeError(`checkSteps requires rising steps with prices from 0, got ${price} from ${from}`);
    }
    before = from;
  }
}
