import { randomUUID } from "node:crypto";
import { linePackPrice } from "#lib/purchasing/line-sum";
import type { Day } from "#lib/units/day";
import type { PurchaseLineBody } from "#prisma/records/purchases";
import type { Offer } from "#prisma/records/suppliers";

/**
 * A new line of an order: packs of an offer at its price as it stands.
 *
 * @param offer the offer
 * @param packs whole packs from 1
 * @param expectedOn when they should come
 * @throws RangeError when the packs are not whole from 1
 */
export function lineOfOffer(offer: Offer, packs: number, expectedOn: Day): PurchaseLineBody {
  const { id: offerId, supplyId, packAmount } = offer;
  const priceMinor = linePackPrice(offer, packs);
  return { id: randomUUID(), supplyId, offerId, packs, packAmount, priceMinor, expectedOn };
}
