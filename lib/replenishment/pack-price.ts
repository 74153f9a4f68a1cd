/** A pack's price from the first pack on, and its price breaks; minor units. */
type PackPrices = {
  readonly priceMinor: number | null;
  readonly breaks: readonly { readonly fromPacks: number; readonly priceMinor: number }[];
};

/**
 * Price of one pack when so many are bought: the break with the most packs that are reached counts for all of them.
 *
 * @param prices the price from the first pack on and the breaks, in any order, minor units
 * @param packs whole packs
 * @returns minor units a pack, or null when no price is known
 * @example packPrice({ priceMinor: 500, breaks: [{ fromPacks: 4, priceMinor: 450 }] }, 5) // 450
 */
export function packPrice(prices: PackPrices, packs: number): number | null {
  const reached = prices.breaks.filter((step) => step.fromPacks <= packs);
  const highest = reached.toSorted((a, b) => b.fromPacks - a.fromPacks)[0];
  return highest === undefined ? prices.priceMinor : highest.priceMinor;
}

/**
 * Price of so many packs together. All-units breaks: the price reached counts for every pack. Incremental breaks: the
 * packs below a break keep the price before it, those from it on have its own.
 *
 * @param prices the price from the first pack on, the breaks in any order, minor units, and the kind of the breaks
 * @param packs whole packs from 0
 * @returns minor units together, or null when a price that is needed is not known
 * @throws RangeError when the packs are not whole from 0
 * @example packsPrice({ priceMinor: 500, breaks: [{ fromPacks: 4, priceMinor: 450 }], breakKind: "incremental" }, 5)
 * // 3 × 500 + 2 × 450 = 2400
 */
export function packsPrice(
  prices: PackPrices & { readonly breakKind?: "all-units" | "incremental" },
  packs: number,
): number | null {
  if (!Number.isSafeInteger(packs) || packs < 0) {
    throw new RangeError(`packsPrice requires whole packs from 0, got ${packs}`);
  }
  if (prices.breakKind !== "incremental") {
    const price = packPrice(prices, packs);
    return price === null ? null : price * packs;
  }
  const steps = prices.breaks
    .filter((step) => step.fromPacks <= packs)
    .toSorted((a, b) => a.fromPacks - b.fromPacks);
  const tiers = [{ fromPacks: 1, priceMinor: prices.priceMinor }, ...steps];
  return tiers.reduce<number | null>((sum, tier, index) => {
    const until = tiers[index + 1]?.fromPacks ?? packs + 1;
    const inTier = Math.max(0, until - tier.fromPacks);
    if (sum === null || inTier === 0) return sum;
    return tier.priceMinor === null ? null : sum + inTier * tier.priceMinor;
  }, 0);
}
