/** What a lot of one supply costs to order and to hold. */
export type LotTerms = {
  /** a cost for each order, whatever its size */
  readonly orderCost: number;
  /** cost of holding one unit for a year, above 0 */
  readonly holdingCost: number;
  /** units used in a year, from 0 */
  readonly yearlyUse: number;
};

/**
 * Economic order quantity: the lot at which ordering and holding together cost least, if use is even.
 *
 * sqrt(2 orderCost yearlyUse / holdingCost)
 *
 * @param terms costs in one currency unit, use in units a year
 * @returns units a lot, not rounded
 * @throws RangeError when the holding cost is not above 0 or another term below 0
 * @see Harris (1913), How many parts to make at once (from memory); published values in tests/reference
 * @example economicOrderQuantity({ orderCost: 8, holdingCost: 0.225, yearlyUse: 1300 }) // 304.05
 */
export function economicOrderQuantity(terms: LotTerms): number {
  checkTerms("economicOrderQuantity", terms);
  return Math.sqrt((2 * terms.orderCost * terms.yearlyUse) / terms.holdingCost);
}

/**
 * What ordering and holding cost a year with lots of a given size; goods not counted.
 *
 * orderCost yearlyUse / lot + holdingCost lot / 2
 *
 * @param terms costs in one currency unit, use in units a year
 * @param lot units a lot, above 0
 * @returns currency units a year
 * @throws RangeError when the lot or the holding cost is not above 0 or another term below 0
 * @see Harris (1913) (from memory); published values in tests/reference
 * @example lotCost({ orderCost: 8, holdingCost: 0.225, yearlyUse: 1300 }, 250) // 69.725
 */
export function lotCost(terms: LotTerms, lot: number): number {
  checkTerms("lotCost", terms);
  if (!(lot > 0)) throw new RangeError(`lotCost requires a lot above 0, got ${lot}`);
  return (terms.orderCost * terms.yearlyUse) / lot + (terms.holdingCost * lot) / 2;
}

function checkTerms(name: string, { orderCost, holdingCost, yearlyUse }: LotTerms): void {
  if (!(holdingCost > 0 && orderCost >= 0 && yearlyUse >= 0)) {
    throw new RangeError(
      `${name} requires a holding cost above 0, an order cost and a use from 0, ` +
        `got ${holdingCost}, ${orderCost}, ${yearlyUse}`,
    );
  }
}
