import { AMOUNT_PER_UNIT } from "#lib/units/amount";
import type { Day } from "#lib/units/day";
import type { Database } from "../client";

const VALUE_PER_MINOR = 10_000;

/**
 * What buying each supply again costs: the cheapest price of one pack on offer, without delivery and price breaks, in
 * 1/10,000 minor unit a use unit.
 *
 * @param db the database
 * @param on the day whose prices count, from the offers' history of prices, those out of use by now too; left out:
 *   the offers as they stand
 * @returns by supply; one without a price is not in it
 */
export async function replacementPrices(db: Database, on?: Day): Promise<Map<string, number>> {
  const offers = await db.offer.findMany({
    where: {
      packAmount: { gt: 0 },
      ...(on === undefined ? { retired: false, supplier: { retired: false } } : {}),
    },
    select: {
      supplyId: true,
      packAmount: true,
      priceMinor: true,
      prices: {
        where: on === undefined ? {} : { fromDay: { lte: on } },
        orderBy: { fromDay: "desc" },
        take: 1,
        select: { priceMinor: true },
      },
    },
  });
  const cheapest = new Map<string, number>();
  for (const offer of offers) {
    const minor = on === undefined ? offer.priceMinor : (offer.prices[0]?.priceMinor ?? null);
    if (minor === null) continue;
    const perUnit = (minor * VALUE_PER_MINOR * AMOUNT_PER_UNIT) / Number(offer.packAmount);
    cheapest.set(offer.supplyId, Math.min(perUnit, cheapest.get(offer.supplyId) ?? perUnit));
  }
  return cheapest;
}
