import { checkJointTerms, type JointTerms } from "#lib/replenishment/order-quantity/joint-replenishment";
import { powerOfTwo } from "#lib/replenishment/order-quantity/power-of-two";

/** Longest interval looked at: 2^30 periods. */
const LONGEST = 2 ** 30;

/** A rhythm of 1, 2, 4, 8, ... periods for the order and for each item on it. */
export type PowerOfTwoPlan = {
  /** periods between orders */
  readonly orderPeriods: number;
  /** periods between an item's turns, in the order of the items; none below the order's */
  readonly itemPeriods: readonly number[];
  /** ordering and holding, currency units a year */
  readonly cost: number;
};

/**
 * Joint replenishment in a rhythm of powers of two, which a person can keep: "paper every two weeks, cartons every
 * eight". Tries every interval for the order; each item takes its best, not below that.
 *
 * @param terms costs in one currency unit, use in units a year
 * @param periodYears length of a period in years, above 0; 7 / 365.25 for a week
 * @returns periods and cost a year; between equals the shorter
 * @throws RangeError when a term or the period is out of range
 * @see Jackson, Maxwell and Muckstadt (1985), The joint replenishment problem with a powers-of-two restriction (from
 * memory); a published value in tests/reference
 * @example powerOfTwoReplenishment({ orderCost: 5, items: [{ lineCost: 1, holdingCost: 1, yearlyUse: 2 }] }, 1 / 52)
 */
export function powerOfTwoReplenishment(terms: JointTerms, periodYears: number): PowerOfTwoPlan {
  checkJointTerms("powerOfTwoReplenishment", terms);
  if (!(periodYears > 0)) {
    throw new RangeError(`powerOfTwoReplenishment requires a period above 0, got ${periodYears}`);
  }
  const wished = terms.items.map(({ lineCost, holdingCost, yearlyUse }) =>
    powerOfTwo(Math.sqrt((2 * lineCost) / (holdingCost * yearlyUse)) / periodYears),
  );
  let best: PowerOfTwoPlan | null = null;
  for (let orderPeriods = 1; orderPeriods <= LONGEST; orderPeriods *= 2) {
    const itemPeriods = wished.map((periods) => Math.max(orderPeriods, periods));
    const cost = terms.items.reduce(
      (sum, { lineCost, holdingCost, yearlyUse }, item) => {
        const years = (itemPeriods[item] ?? orderPeriods) * periodYears;
        return sum + lineCost / years + (holdingCost * yearlyUse * years) / 2;
      },
      terms.orderCost / (orderPeriods * periodYears),
    );
    if (best === null || cost < best.cost) best = { orderPeriods, itemPeriods, cost };
    else break;
  }
  if (best === null) throw new RangeError("powerOfTwoReplenishment requires an interval, found none");
  return best;
}
