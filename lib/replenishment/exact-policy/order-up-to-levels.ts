import { countStockCost, type EndCosts } from "#lib/replenishment/exact-policy/count-stock-cost";
import { type GridDistribution, gridMean, gridSum } from "#lib/statistics/grid-distribution";
import { repeatedGrid } from "#lib/statistics/repeated-grid";

/** A shop that looks at one supply at each review; what is not there is used when it comes. */
export type OrderUpToTerms = EndCosts & {
  /** of each order, whatever its size, above 0 */
  readonly orderCost: number;
  /** use in a period, above 0 on average; costs are of a unit of it, levels whole numbers of its steps */
  readonly use: GridDistribution;
  /** whole periods; 0: it is there before the period's use */
  readonly leadTimePeriods: number;
  /** whole periods from one review to the next, 1 where nothing is said: days of a weekly check, 7 */
  readonly reviewPeriods?: number;
};

/** Order when the position is at or under the lower level, up to the upper one; both in steps of the use. */
export type OrderUpToLevels = {
  readonly reorderPoint: number;
  readonly orderUpTo: number;
  /** a period, on average for ever */
  readonly cost: number;
};

/**
 * The best reorder point and order-up-to level there are: no other way to order is cheaper on average, if use in each
 * period is independent and alike. The best possible, to hold other ways of ordering against. Costs arise at the end of
 * each period, also between reviews.
 *
 * @param terms costs, use and lead time
 * @returns the two levels, whole, and the average cost a period
 * @throws RangeError when a cost or the mean use is not above 0 or lead time and review are not whole
 * @see Zheng and Federgruen (1991), Finding optimal (s, S) policies is about as simple as evaluating a single policy,
 * Operations Research 39(4), 654-665 (from memory); its table of results in tests/reference
 * @example orderUpToLevels({ orderCost: 64, holdingCost: 1, shortageCost: 9, leadTimePeriods: 0, use }) // for a Poisson
 *   use of 10: { reorderPoint: 6, orderUpTo: 40, cost: 35.022 }
 */
export function orderUpToLevels(terms: OrderUpToTerms): OrderUpToLevels {
  const { endCost, average } = reckoning("orderUpToLevels", terms);
  const lowest = cheapestStock(endCost, terms);
  let orderUpTo = lowest;
  let reorderPoint = lowest - 1;
  while (average(reorderPoint, orderUpTo) > endCost(reorderPoint)) reorderPoint -= 1;
  let cost = average(reorderPoint, orderUpTo);
  for (let level = orderUpTo + 1; endCost(level) <= cost; level += 1) {
    if (average(reorderPoint, level) >= cost) continue;
    orderUpTo = level;
    while (average(reorderPoint, orderUpTo) <= endCost(reorderPoint + 1)) reorderPoint += 1;
    cost = average(reorderPoint, orderUpTo);
  }
  return { reorderPoint, orderUpTo, cost };
}

/**
 * What any two levels cost a period on average.
 *
 * [orderCost + sum of m(j) G(S - j) for j below S - s] / M(S - s), with m the expected visits to each level, M their sum
 *
 * @param terms costs, use and lead time
 * @param levels whole, the reorder point below the order-up-to level
 * @returns currency units a period
 * @throws RangeError when a term is out of range or the levels are not in order
 * @see Zheng and Federgruen (1991) (from memory)
 * @example orderUpToCost(terms, { reorderPoint: 6, orderUpTo: 40 }) // 35.022
 */
export function orderUpToCost(
  terms: OrderUpToTerms,
  { reorderPoint, orderUpTo }: Pick<OrderUpToLevels, "reorderPoint" | "orderUpTo">,
): number {
  if (!(Number.isSafeInteger(reorderPoint) && Number.isSafeInteger(orderUpTo) && reorderPoint < orderUpTo)) {
    throw new RangeError(
      `orderUpToCost requires a whole reorder point below the other level, got ${reorderPoint} and ${orderUpTo}`,
    );
  }
  return reckoning("orderUpToCost", terms).average(reorderPoint, orderUpTo);
}

type Reckoning = {
  readonly endCost: (level: number) => number;
  readonly average: (reorderPoint: number, orderUpTo: number) => number;
};

function reckoning(name: string, terms: OrderUpToTerms): Reckoning {
  const { orderCost, use, reviewPeriods = 1 } = terms;
  if (!(orderCost > 0 && gridMean(use) > 0)) {
    throw new RangeError(`${name} requires an order cost and a mean use above 0, got ${orderCost}`);
  }
  if (!(Number.isSafeInteger(reviewPeriods) && reviewPeriods > 0)) {
    throw new RangeError(`${name} requires whole review periods above 0, got ${reviewPeriods}`);
  }
  const endCost = costUntilNextReview(terms, reviewPeriods);
  const visits = expectedVisits(repeatedGrid(use, reviewPeriods));
  const average = (reorderPoint: number, orderUpTo: number): number => {
    let cost = orderCost / reviewPeriods;
    let reviews = 0;
    for (let below = 0; below < orderUpTo - reorderPoint; below += 1) {
      const times = visits(below);
      cost += times * endCost(orderUpTo - below);
      reviews += times;
    }
    return cost / reviews;
  };
  return { endCost, average };
}

/**
 * Average cost of a period that a position of this level answers for: what is ordered now comes after the lead time, and
 * what is ordered at the next review one review later.
 */
function costUntilNextReview(terms: OrderUpToTerms, reviewPeriods: number): (level: number) => number {
  let used = repeatedGrid(terms.use, terms.leadTimePeriods);
  const costs = Array.from({ length: reviewPeriods }, () => {
    used = gridSum(used, terms.use);
    return countStockCost(terms, used);
  });
  return (level) => costs.reduce((sum, cost) => sum + cost(level), 0) / reviewPeriods;
}

/** How often the position is expected so far below the order-up-to level, until the next order. */
function expectedVisits({ chances }: GridDistribution): (below: number) => number {
  const stays = 1 - (chances[0] ?? 0);
  const visits = [1 / stays];
  return (below) => {
    for (let level = visits.length; level <= below; level += 1) {
      let sum = 0;
      for (let used = 1; used <= level && used < chances.length; used += 1) {
        sum += (chances[used] ?? 0) * (visits[level - used] ?? 0);
      }
      visits.push(sum / stays);
    }
    return visits[below] ?? 0;
  };
}

function cheapestStock(endCost: (level: number) => number, { use, leadTimePeriods }: OrderUpToTerms): number {
  let level = Math.round((gridMean(use) / use.step) * (leadTimePeriods + 1));
  while (endCost(level + 1) < endCost(level)) level += 1;
  while (endCost(level - 1) <= endCost(level)) level -= 1;
  return level;
}
