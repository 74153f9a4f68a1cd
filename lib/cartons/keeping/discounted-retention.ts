/**
 * How many years ahead a carton may be needed and still be worth keeping, when later money counts less and holding is
 * paid out of pocket: ln((price + h/r) / (salvage + h/r)) / r.
 *
 * @param terms price, salvage (below zero where letting go costs money), holding per carton and year from zero, and the
 *   yearly rate at which later money counts less, above zero
 * @returns years; 0 where it brings its price now, Infinity where letting go costs more than holding for ever
 * @throws RangeError if a term is not as said
 * @see derived: kept while salvage + holding until then is at most the later price, all at today's value
 * @example discountedRetention({ unitCost: 4, salvage: 1, yearlyHolding: 0.5, discountRate: 0.1 }) // 4.0547
 */
export function discountedRetention(terms: {
  readonly unitCost: number;
  readonly salvage: number;
  readonly yearlyHolding: number;
  readonly discountRate: number;
}): number {
  const { unitCost, salvage, yearlyHolding, discountRate } = terms;
  if (!(unitCost >= 0 && yearlyHolding >= 0 && discountRate > 0 && Number.isFinite(salvage))) {
    throw new RangeError(
      `discountedRetention requires a price and a holding cost from zero and a rate above it, got ${JSON.stringify(terms)}`,
    );
  }
  const forEver = yearlyHolding / discountRate;
  if (salvage >= unitCost) return 0;
  if (salvage + forEver <= 0) return Number.POSITIVE_INFINITY;
  return Math.log((unitCost + forEver) / (salvage + forEver)) / discountRate;
}
