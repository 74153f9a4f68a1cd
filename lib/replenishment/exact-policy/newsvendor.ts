import {
  checkEndCosts,
  countStockCost,
  type EndCosts,
} from "#lib/replenishment/exact-policy/count-stock-cost";
import { type Normal, normalStockCost } from "#lib/replenishment/exact-policy/normal-stock-cost";
import { type GridDistribution, gridQuantile } from "#lib/statistics/grid-distribution";
import { normalQuantile } from "#lib/statistics/normal-quantile";

/** The stock to begin a period with, and what its end is expected to cost. */
export type BestLevel = { readonly level: number; readonly cost: number };

/**
 * Best stock for one period of a normal use: the quantile at shortage cost / (shortage + holding cost).
 *
 * @param costs of a unit left and of a unit short, above 0
 * @param use mean and standard deviation
 * @returns level, not rounded, and expected cost
 * @throws RangeError when a cost is not above 0
 * @see Arrow, Harris and Marschak (1951), Optimal inventory policy (from memory); published values in tests/reference
 * @example normalNewsvendor({ holdingCost: 2, shortageCost: 18 }, { mean: 120, deviation: 10 }).level // 132.8
 */
export function normalNewsvendor(costs: EndCosts, use: Normal): BestLevel {
  checkEndCosts("normalNewsvendor", costs);
  const level = use.mean + normalQuantile(criticalShare(costs)) * use.deviation;
  return { level, cost: normalStockCost(costs, use)(level) };
}

/**
 * Best stock for one period of a use counted in steps.
 *
 * @param costs of a unit left and of a unit short, above 0
 * @param use in the period
 * @returns level, a whole number of steps in the unit of the use, and expected cost
 * @throws RangeError when a cost is not above 0
 * @see as `normalNewsvendor`; the least count whose chance of not being exceeded reaches the share
 * @example countNewsvendor({ holdingCost: 1, shortageCost: 1 }, gridOf(1, [1, 2, 1])).level // 1
 */
export function countNewsvendor(costs: EndCosts, use: GridDistribution): BestLevel {
  checkEndCosts("countNewsvendor", costs);
  const level = gridQuantile(use, criticalShare(costs));
  return { level, cost: countStockCost(costs, use)(Math.round(level / use.step)) };
}

function criticalShare({ holdingCost, shortageCost }: EndCosts): number {
  return shortageCost / (shortageCost + holdingCost);
}
