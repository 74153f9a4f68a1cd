import { wholePacks } from "#lib/replenishment/order-quantity/whole-packs";

/** Supplies that are ordered together: one cost for each order, and one for each supply on it. */
export type JointTerms = {
  /** cost of each order, whatever is on it; above 0 */
  readonly orderCost: number;
  readonly items: readonly {
    /** cost of having it on an order, from 0 */
    readonly lineCost: number;
    /** cost of holding one unit for a year, above 0 */
    readonly holdingCost: number;
    /** units a year, above 0 */
    readonly yearlyUse: number;
  }[];
};

/** A rhythm: an order every cycle, and each item on every so many of them. */
export type JointPlan = {
  /** each item is on every 1st, 2nd, 3rd, ... order, in the order of the items */
  readonly multiples: readonly number[];
  /** years between orders */
  readonly cycle: number;
  /** ordering and holding, currency units a year */
  readonly cost: number;
};

/**
 * Joint replenishment, the best strict rhythm: an order every cycle and each item on every so many of them. Walks the
 * cycle down from the longest; for a cycle T the best multiple of an item is the least n with
 * n (n + 1) >= 2 lineCost / (holdingCost yearlyUse T²), so that the multiples change one at a time. No cycle is cheaper
 * than its orders alone, orderCost / T, which ends the walk.
 *
 * @param terms costs in one currency unit, use in units a year
 * @returns multiples, cycle in years and cost a year
 * @throws RangeError when there is no item or a term is out of range
 * @see Goyal (1974), Determination of optimum packaging frequency of items jointly replenished (from memory); values
 * computed independently in tests/reference
 * @example jointReplenishment({ orderCost: 10, items: [{ lineCost: 2, holdingCost: 1, yearlyUse: 52 }] }).multiples // [1]
 */
export function jointReplenishment(terms: JointTerms): JointPlan {
  checkJointTerms("jointReplenishment", terms);
  const multiples = terms.items.map(() => 1);
  let best = jointPlan(terms, multiples);
  for (;;) {
    const next = nextChange(terms, multiples);
    if (next.cycle * best.cost <= terms.orderCost) return best;
    multiples[next.item] = (multiples[next.item] ?? 1) + 1;
    const plan = jointPlan(terms, multiples);
    if (plan.cost < best.cost) best = plan;
  }
}

/**
 * Joint replenishment by rule of thumb: the item with the least line cost for its worth of use is on every order, and
 * the others by their ratio to it, rounded. To compare: usually within some percent of `jointReplenishment`.
 *
 * @param terms costs in one currency unit, use in units a year
 * @returns multiples, the best cycle for them in years and cost a year
 * @throws RangeError when there is no item or a term is out of range
 * @see Silver (1976), A simple method of determining order quantities in joint replenishments (from memory);
 * published values in tests/reference
 * @example ruleOfThumbReplenishment({ orderCost: 10, items: [{ lineCost: 2, holdingCost: 1, yearlyUse: 52 }] }).multiples // [1]
 */
export function ruleOfThumbReplenishment(terms: JointTerms): JointPlan {
  checkJointTerms("ruleOfThumbReplenishment", terms);
  const ratios = terms.items.map(
    ({ lineCost, holdingCost, yearlyUse }) => lineCost / (holdingCost * yearlyUse),
  );
  const first = ratios.indexOf(Math.min(...ratios));
  const leader = terms.items[first] ?? { lineCost: 0, holdingCost: 1, yearlyUse: 1 };
  const worth = (leader.holdingCost * leader.yearlyUse) / (terms.orderCost + leader.lineCost);
  const multiples = ratios.map((ratio, item) =>
    item === first ? 1 : Math.max(1, Math.round(Math.sqrt(ratio * worth))),
  );
  return jointPlan(terms, multiples);
}

/**
 * The best cycle for given multiples and what it costs.
 *
 * cost = sqrt(2 (orderCost + sum(lineCost / n)) sum(holdingCost yearlyUse n))
 *
 * @param terms costs in one currency unit, use in units a year
 * @param multiples one for each item, whole, from 1
 * @returns the plan
 */
export function jointPlan(terms: JointTerms, multiples: readonly number[]): JointPlan {
  let ordering = terms.orderCost;
  let holding = 0;
  terms.items.forEach(({ lineCost, holdingCost, yearlyUse }, item) => {
    const multiple = multiples[item] ?? 1;
    ordering += lineCost / multiple;
    holding += holdingCost * yearlyUse * multiple;
  });
  return {
    multiples: [...multiples],
    cycle: Math.sqrt((2 * ordering) / holding),
    cost: Math.sqrt(2 * ordering * holding),
  };
}

/** The longest cycle, shorter than the last, at which an item's best multiple grows by one; and which item's. */
function nextChange(terms: JointTerms, multiples: readonly number[]): { item: number; cycle: number } {
  let next = { item: 0, cycle: 0 };
  terms.items.forEach(({ lineCost, holdingCost, yearlyUse }, item) => {
    const multiple = multiples[item] ?? 1;
    const cycle = Math.sqrt((2 * lineCost) / (holdingCost * yearlyUse * multiple * (multiple + 1)));
    if (cycle > next.cycle) next = { item, cycle };
  });
  return next;
}

/**
 * The best multiple of one item for a given cycle, to check a plan by.
 *
 * @param item its costs and use
 * @param cycle years between orders, above 0
 * @returns whole, from 1
 * @throws RangeError when the cycle is not above 0
 * @example bestMultiple({ lineCost: 2, holdingCost: 1, yearlyUse: 52 }, 0.1) // 3
 */
export function bestMultiple(item: JointTerms["items"][number], cycle: number): number {
  if (!(cycle > 0)) throw new RangeError(`bestMultiple requires a cycle above 0, got ${cycle}`);
  return wholePacks(Math.sqrt((2 * item.lineCost) / (item.holdingCost * item.yearlyUse)) / cycle);
}

/**
 * Checks the terms of a joint order.
 *
 * @param name of the caller, for the message
 * @param terms what is checked
 * @throws RangeError when there is no item, or a cost or a use is out of range
 */
export function checkJointTerms(name: string, { orderCost, items }: JointTerms): void {
  if (items.length === 0) throw new RangeError(`${name} requires an item, got none`);
  if (!(orderCost > 0)) throw new RangeError(`${name} requires an order cost above 0, got ${orderCost}`);
  for (const { lineCost, holdingCost, yearlyUse } of items) {
    if (!(lineCost >= 0 && holdingCost > 0 && yearlyUse > 0)) {
      throw new RangeError(
        `${name} requires a line cost from 0, a holding cost and a use above 0, ` +
          `got ${lineCost}, ${holdingCost}, ${yearlyUse}`,
      );
    }
  }
}
