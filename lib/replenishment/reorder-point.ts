import type { ServiceGoal } from "#lib/replenishment/service-goal";
import {
  type GridDistribution,
  gridMean,
  gridQuantile,
  gridQuantileBetween,
  gridShortages,
  gridSum,
  gridUpTo,
} from "#lib/statistics/grid-distribution";

/** What a reorder point is made of; both distributions on the same steps. */
export type ReorderPointQuestion = {
  /** how far stock has fallen below the point when the order goes out */
  readonly undershoot: GridDistribution;
  /** used from the order until its delivery */
  readonly leadTimeUse: GridDistribution;
  /** whether amounts come in whole steps */
  readonly whole: boolean;
  readonly goal: ServiceGoal;
  /** what an order brings as a rule, in the unit of the steps; what a shared goal lets be missing is a share of it */
  readonly orderAmount: number;
};

/** A reorder point and what it does. */
export type ReorderPoint = {
  /** in the unit of the steps */
  readonly amount: number;
  /** expected undershoot and use until the delivery, together */
  readonly expected: number;
  readonly variance: number;
  /** share of order cycles in which stock lasts until the delivery */
  readonly cycleLevel: number;
  /** share of the need that is filled from stock */
  readonly filledShare: number;
};

/**
 * Reorder point: the least stock position at which an order must go out so that the goal is met. Position at or under
 * it: order. A cycle ends well when undershoot and lead-time use together do not exceed it; what they exceed it by
 * is missing, once in each order.
 *
 * @param question undershoot, use until the delivery, and the goal
 * @returns the point and the service it gives
 * @throws RangeError when the level is not between 0 and 1, or the order brings nothing
 * @see Silver, Pyke and Thomas (2017), Inventory and Production Management in Supply Chains, chapters 6 and 7: cycle
 *   service and fill rate of an order-point system with undershoot (from memory)
 * @example reorderPoint({ undershoot: gridOf(1, [1]), leadTimeUse: gridOf(1, [0.5, 0.4, 0.1]), whole: true,
 *   goal: { kind: "cycles", level: 0.9 }, orderAmount: 10 }).amount // 1
 */
export function reorderPoint(question: ReorderPointQuestion): ReorderPoint {
  const { goal, orderAmount, whole } = question;
  if (!(goal.level > 0 && goal.level < 1 && orderAmount > 0)) {
    throw new RangeError(
      `reorderPoint requires a level between 0 and 1 and an order above 0, got ${goal.level} and ${orderAmount}`,
    );
  }
  const used = gridSum(question.undershoot, question.leadTimeUse);
  const shortages = gridShortages(used);
  const amount =
    goal.kind === "cycles" ? cyclePoint(used, goal.level, whole) : sharePoint(question, shortages, used);
  const at = Math.floor(amount / used.step + 1e-9);
  const expected = gridMean(used);
  return {
    amount,
    expected,
    variance: varianceOf(used, expected),
    cycleLevel: goal.kind === "cycles" && !whole ? goal.level : gridUpTo(used, amount),
    filledShare: Math.max(0, 1 - (shortages[at] ?? 0) / orderAmount),
  };
}

function cyclePoint(used: GridDistribution, level: number, whole: boolean): number {
  return whole ? gridQuantile(used, level) : gridQuantileBetween(used, level);
}

/** The least amount beyond which no more is missing than the goal lets be. */
function sharePoint(
  { goal, orderAmount }: ReorderPointQuestion,
  shortages: Float64Array,
  used: GridDistribution,
): number {
  const allowed = (1 - goal.level) * orderAmount;
  return (
    Math.max(
      0,
      shortages.findIndex((short) => short <= allowed),
    ) * used.step
  );
}

function varianceOf({ step, chances }: GridDistribution, mean: number): number {
  return chances.reduce((sum, chance, at) => sum + chance * (at * step - mean) ** 2, 0);
}
