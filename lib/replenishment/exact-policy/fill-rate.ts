import type { Normal } from "#lib/replenishment/exact-policy/normal-stock-cost";
import { unitNormalLoss } from "#lib/statistics/unit-normal-loss";
import { unitNormalLossInverse } from "#lib/statistics/unit-normal-loss-inverse";

/** A shop that orders every review up to a level; periods are independent and normal. */
export type OrderUpToShop = {
  readonly orderUpTo: number;
  /** use in one period, mean above 0 */
  readonly period: Normal;
  readonly reviewPeriods: number;
  readonly leadTimePeriods: number;
};

/**
 * Share of the use met from stock. The exact share takes off what was already short when a delivery came; the usual one
 * forgets that and is too low where stock is short often.
 *
 * exact = 1 - [ES(R + L) - ES(L)] / (R mean), usual = 1 - ES(R + L) / (R mean), ES the expected shortage over so many
 * periods
 *
 * @param shop level, use, review and lead time in periods
 * @returns both shares; the usual one may be below 0
 * @throws RangeError when the mean, the deviation or the review is not above 0 or the lead time below 0
 * @see Johnson, Lee, Davis and Hall (1995), Expressions for item fill rates in periodic inventory systems (from memory);
 * computed values in tests/reference
 * @example fillRate({ orderUpTo: 70, period: { mean: 20, deviation: 8 }, reviewPeriods: 1, leadTimePeriods: 3 }).exact // 0.466
 */
export function fillRate(shop: OrderUpToShop): { readonly exact: number; readonly usual: number } {
  const { orderUpTo, period, reviewPeriods, leadTimePeriods } = shop;
  if (!(period.mean > 0 && period.deviation > 0 && reviewPeriods > 0 && leadTimePeriods >= 0)) {
    throw new RangeError(
      "fillRate requires a mean, a deviation and a review above 0 and a lead time from 0, " +
        `got ${period.mean}, ${period.deviation}, ${reviewPeriods}, ${leadTimePeriods}`,
    );
  }
  const short = (periods: number): number => {
    if (periods === 0) return Math.max(0, -orderUpTo);
    const deviation = period.deviation * Math.sqrt(periods);
    return deviation * unitNormalLoss((orderUpTo - periods * period.mean) / deviation);
  };
  const used = reviewPeriods * period.mean;
  const after = short(reviewPeriods + leadTimePeriods);
  return { exact: 1 - (after - short(leadTimePeriods)) / used, usual: 1 - after / used };
}

/**
 * Deviations to keep so that a share of the use is met from stock, with a lot ordered each time: the usual reckoning. A
 * large lot is rarely near its end, so that the factor may be below 0: less than the expected use is enough.
 *
 * G(factor) = lot (1 - share) / deviation
 *
 * @param terms lot, above 0; wanted share, between 0 and 1; deviation of the use over the lead time, above 0
 * @returns deviations above the mean, below 0 where the lot alone does it
 * @throws RangeError when a term is out of range
 * @see Nahmias, Production and Operations Analysis, type 2 service (from memory); published values in tests/reference
 * @example fillRateFactor({ lot: 100, share: 0.98, deviation: 25 }) // 1.02
 */
export function fillRateFactor(terms: {
  readonly lot: number;
  readonly share: number;
  readonly deviation: number;
}): number {
  const { lot, share, deviation } = terms;
  if (!(lot > 0 && share > 0 && share < 1 && deviation > 0)) {
    throw new RangeError(
      "fillRateFactor requires a lot and a deviation above 0 and a share between 0 and 1, " +
        `got ${lot}, ${deviation}, ${share}`,
    );
  }
  return unitNormalLossInverse((lot * (1 - share)) / deviation);
}
