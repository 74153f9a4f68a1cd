/** What a carton is worth to keep: costs in one currency unit each, a year as the time. */
export type RetentionTerms = {
  /** cartons used a year, from zero */
  readonly yearlyUse: number;
  /** what one costs to buy again, above zero */
  readonly unitCost: number;
  /** what one brings when it goes; below zero where that costs money */
  readonly salvage: number;
  /** holding a year as a share of the price, above zero */
  readonly holdingRate: number;
  /** a cost for each order, whatever its size, from zero */
  readonly orderCost: number;
  /** cartons bought at a time, above zero: the usual lot, or the economic quantity */
  readonly lot: number;
};

/** How much it pays to keep; neither is rounded. */
export type Retention = { readonly keep: number; readonly keepYears: number };

/**
 * Economic retention: how many years of use it pays to keep. The last carton kept costs as much to hold until it is used
 * as it costs to let it go now and to buy one again then.
 *
 * years = (price - salvage + order cost / lot) / (price × holding rate) + lot / (2 × yearly use)
 *
 * With the economic quantity as the lot this is the rule of Silver, Pyke and Peterson, keep = lot + use (price - salvage) /
 * (price × rate). Use is taken as even and going on; damp, damage and room are not in it.
 *
 * @param terms use, prices and costs
 * @returns cartons and years to keep; nothing where a carton brings so much more than its price
 * @throws RangeError if a term is not as said
 * @see Tersine and Toelle (1984): tests/reference/carton-keeping.test.ts
 * @example retention({ yearlyUse: 600, unitCost: 4, salvage: 1, holdingRate: 0.24, orderCost: 15, lot: 200 }).keep // 2021.9
 */
export function retention(terms: RetentionTerms): Retention {
  const { yearlyUse, unitCost, salvage, holdingRate, orderCost, lot } = terms;
  const above = [yearlyUse, unitCost, holdingRate, lot].every((each) => each > 0 && Number.isFinite(each));
  if (!(above && orderCost >= 0 && Number.isFinite(orderCost + salvage))) {
    throw new RangeError(
      "retention requires a use, a price, a rate and a lot above zero and an order cost from zero, " +
        `got ${JSON.stringify(terms)}`,
    );
  }
  const years = (unitCost - salvage + orderCost / lot) / (unitCost * holdingRate) + lot / (2 * yearlyUse);
  const keepYears = Math.max(0, years);
  return { keep: yearlyUse * keepYears, keepYears };
}
