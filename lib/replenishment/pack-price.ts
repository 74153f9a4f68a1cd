/** A pack's price from the first pack on, and its all-units price breaks; minor units. */
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
