import { packsPrice } from "#lib/replenishment/pack-price";

/** A pack's price and its price breaks; minor units. */
export type OfferPrices = Parameters<typeof packsPrice>[0];

/**
 * Price of one pack as a line keeps it: with incremental breaks it is the mean over all its packs, rounded half up to
 * the minor unit.
 *
 * @param prices of the offer
 * @param packs whole packs from 1
 * @returns minor units, or null when no price is known
 * @throws RangeError when the packs are not whole from 1
 * @example linePackPrice({ priceMinor: 500, breaks: [{ fromPacks: 4, priceMinor: 450 }], breakKind: "incremental" }, 5) // 480
 */
export function linePackPrice(prices: OfferPrices, packs: number): number | null {
  if (packs < 1) throw new RangeError(`linePackPrice requires packs from 1, got ${packs}`);
  const together = packsPrice(prices, packs);
  return together === null ? null : Math.round(together / packs);
}

/**
 * What a line of an order comes to: packs × price. Where the price is the rounded mean of an offer with incremental
 * breaks, the offer's own sum is taken, so that nothing is lost by the rounding.
 *
 * @param line packs and the price of one, minor units
 * @param prices of the offer as it stands, or null where it is gone
 * @returns minor units, or null when the price is not known
 * @example lineSum({ packs: 3, priceMinor: 700 }, null) // 2100
 */
export function lineSum(
  line: { readonly packs: number; readonly priceMinor: number | null },
  prices: OfferPrices | null,
): number | null {
  if (line.priceMinor === null) return null;
  const plain = line.priceMinor * line.packs;
  if (prices === null || line.packs < 1 || prices.breakKind !== "incremental") return plain;
  const isSamePrice = linePackPrice(prices, line.packs) === line.priceMinor;
  return isSamePrice ? packsPrice(prices, line.packs) : plain;
}
