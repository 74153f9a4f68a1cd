import type { OfferPacks } from "#lib/replenishment/check-row";
import { packsPrice } from "#lib/replenishment/pack-price";
import type { CheckOffer } from "#lib/replenishment/suggested-packs";

/** An offer with the packs that would be ordered of it. */
export type PackedOffer = { readonly offer: CheckOffer; readonly packs: number };

/**
 * Best offer: the least price a use unit at the packs that would be ordered. Offers without a price come
 * last; between equals the shorter lead time, then the smaller pack.
 *
 * @param packed offers with their packs
 * @returns the best, or null when there is none
 * @example bestOffer([]) // null
 */
export function bestOffer(packed: readonly PackedOffer[]): PackedOffer | null {
  const sorted = packed.toSorted(
    (a, b) =>
      compared(unitPrice(a), unitPrice(b)) ||
      a.offer.delivery.terms.promisedDays - b.offer.delivery.terms.promisedDays ||
      a.offer.packAmount - b.offer.packAmount,
  );
  return sorted[0] ?? null;
}

/**
 * What an offer would be ordered at.
 *
 * @param packed offer and packs
 * @returns packs with their price together, minor units, null when no price is known
 */
export function offerPacks({ offer, packs }: PackedOffer): OfferPacks {
  return { offerId: offer.offerId, pack: offer.pack, packs, priceMinor: packsPrice(offer, packs) };
}

function unitPrice({ offer, packs }: PackedOffer): number {
  const bought = Math.max(1, packs);
  const price = packsPrice(offer, bought);
  return price === null ? Number.POSITIVE_INFINITY : price / bought / offer.packAmount;
}

function compared(a: number, b: number): number {
  return a === b ? 0 : Math.sign(a - b);
}
