import { checkEndCosts, type EndCosts } from "#lib/replenishment/exact-policy/count-stock-cost";
import { unitNormalLoss } from "#lib/statistics/unit-normal-loss";
import { unitNormalSecondLoss } from "#lib/statistics/unit-normal-second-loss";

/** A normal use; its deviation is above 0. */
export type Normal = { readonly mean: number; readonly deviation: number };

/**
 * Expected cost at the end of a period that began with a stock, for a normal use.
 *
 * h E[max(y - X, 0)] + p E[max(X - y, 0)]
 *
 * @param costs of a unit left and of a unit short, above 0
 * @param use mean and standard deviation
 * @returns the cost as a function of the stock
 * @throws RangeError when a cost or the deviation is not above 0
 * @see Snyder and Shen (2019), Fundamentals of Supply Chain Theory, chapter 4 (from memory)
 * @example normalStockCost({ holdingCost: 1, shortageCost: 1 }, { mean: 10, deviation: 2 })(10) // 1.596
 */
export function normalStockCost(costs: EndCosts, { mean, deviation }: Normal): (stock: number) => number {
  checkEndCosts("normalStockCost", costs);
  checkDeviation("normalStockCost", deviation);
  const { holdingCost, shortageCost } = costs;
  return (stock) => {
    const short = deviation * unitNormalLoss((stock - mean) / deviation);
    return holdingCost * (stock - mean + short) + shortageCost * short;
  };
}

/**
 * The cost of `normalStockCost` added up over all stocks from one level to another.
 *
 * @param costs of a unit left and of a unit short, above 0
 * @param use mean and standard deviation
 * @param span the lower and the upper level
 * @returns cost times units
 * @throws RangeError when a cost or the deviation is not above 0
 * @see the area under the unit normal loss is the second-order loss
 * @example normalStockCostArea({ holdingCost: 1, shortageCost: 1 }, { mean: 10, deviation: 2 }, { from: 9, to: 11 })
 */
export function normalStockCostArea(
  costs: EndCosts,
  { mean, deviation }: Normal,
  { from, to }: { readonly from: number; readonly to: number },
): number {
  checkEndCosts("normalStockCostArea", costs);
  checkDeviation("normalStockCostArea", deviation);
  const { holdingCost, shortageCost } = costs;
  const second = (stock: number): number => deviation ** 2 * unitNormalSecondLoss((stock - mean) / deviation);
  const short = second(from) - second(to);
  const ahead = ((to - mean) ** 2 - (from - mean) ** 2) / 2;
  return holdingCost * (ahead + short) + shortageCost * short;
}

function checkDeviation(name: string, deviation: number): void {
  if (!(deviation > 0)) throw new RangeError(`${name} requires a deviation above 0, got ${deviation}`);
}
