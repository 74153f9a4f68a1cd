import { type GridDistribution, gridMean, gridShortages } from "#lib/statistics/grid-distribution";

/** What a period's end costs: for each unit left, and for each unit short. */
export type EndCosts = {
  /** a unit left, above 0 */
  readonly holdingCost: number;
  /** a unit short, above 0 */
  readonly shortageCost: number;
};

/**
 * Expected cost at the end of a period that began with a stock, for a use counted in steps.
 *
 * h E[max(y - X, 0)] + p E[max(X - y, 0)]
 *
 * @param costs of a unit left and of a unit short, above 0
 * @param use in the period
 * @returns the cost as a function of the stock, in whole steps, which may be below 0
 * @throws RangeError when a cost is not above 0
 * @see Snyder and Shen (2019), Fundamentals of Supply Chain Theory, chapter 4 (from memory)
 * @example countStockCost({ holdingCost: 1, shortageCost: 4 }, gridOf(1, [0.5, 0.5]))(1) // 0.5
 */
export function countStockCost(costs: EndCosts, use: GridDistribution): (steps: number) => number {
  checkEndCosts("countStockCost", costs);
  const mean = gridMean(use);
  const shortages = gridShortages(use);
  const { holdingCost, shortageCost } = costs;
  return (steps) => {
    const stock = steps * use.step;
    const short = steps < 0 ? mean - stock : (shortages[steps] ?? 0);
    return holdingCost * (stock - mean + short) + shortageCost * short;
  };
}

/**
 * Checks the costs of a period's end.
 *
 * @param name of the caller, for the message
 * @param costs what is checked
 * @throws RangeError when one is not above 0
 */
export function checkEndCosts(name: string, { holdingCost, shortageCost }: EndCosts): void {
  if (!(holdingCost > 0 && shortageCost > 0)) {
    throw new RangeError(
      `${name} requires a holding and a shortage cost above 0, got ${holdingCost} and ${shortageCost}`,
    );
  }
}
