import type { Offer } from "#prisma/records/suppliers";

/**
 * The price of one pack when so many are bought: the break with the most packs that are reached counts for
 * all of them.
 *
 * @param prices - the price from the first pack on and the breaks, minor units
 * @param packs - packs bought
 * @returns minor units for each pack, or null where no price is known
 * @example packPrice({ priceMinor: 500, breaks: [{ fromPacks: 4, priceMinor: 450 }] }, 5) // 450
 */
export function packPrice(prices: Pick<Offer, "priceMinor" | "breaks">, packs: number): number | null {
  const reached = prices.breaks.filter((each) => each.fromPacks <= packs);
  const best = reached.reduce<{ fromPacks: number; priceMinor: number | null }>(
    (most, each) => (each.fromPacks > most.fromPacks ? each : most),
    { fromPacks: 0, priceMinor: prices.priceMinor },
  );
  return best.priceMinor;
}
