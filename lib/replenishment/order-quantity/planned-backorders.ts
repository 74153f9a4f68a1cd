import {
  economicOrderQuantity,
  type LotTerms,
} from "#lib/replenishment/order-quantity/economic-order-quantity";

/** The best lot where use may wait for a delivery at a cost. */
export type PlannedBackorders = {
  readonly lot: number;
  /** share of the time without stock; also the largest backlog as a share of the lot */
  readonly shortShare: number;
  /** ordering, holding and waiting, a year */
  readonly cost: number;
};

/**
 * Best lot with planned backorders: what is not there is used later, and each unit that waits costs.
 *
 * lot = sqrt(2 K D (h + p) / (h p)), short h / (h + p) of the time
 *
 * @param terms costs in one currency unit, use in units a year
 * @param backorderCost cost of one unit waiting for a year, above 0
 * @returns lot in units, share of the time short, cost a year
 * @throws RangeError when a holding or backorder cost is not above 0 or another term below 0
 * @see Snyder and Shen (2019), Fundamentals of Supply Chain Theory, chapter 3 (from memory); published values in
 * tests/reference
 * @example plannedBackorders({ orderCost: 8, holdingCost: 0.225, yearlyUse: 1300 }, 5).lot // 310.8
 */
export function plannedBackorders(terms: LotTerms, backorderCost: number): PlannedBackorders {
  if (!(backorderCost > 0)) {
    throw new RangeError(`plannedBackorders requires a backorder cost above 0, got ${backorderCost}`);
  }
  const { holdingCost } = terms;
  const shortShare = holdingCost / (holdingCost + backorderCost);
  // A unit of the lot costs the part of the time that it is held, at the holding cost.
  const heldCost = holdingCost * (1 - shortShare);
  const lot = economicOrderQuantity({ ...terms, holdingCost: heldCost });
  return { lot, shortShare, cost: heldCost * lot };
}
