import { mainCardOn } from "#lib/postage/card-on";
import { addDays } from "#lib/units/day";
import { parcelCountsOf } from "#prisma/records/parcel-lists";
import { rateCardsOf } from "#prisma/records/rate-cards";
import type { ShopNow } from "../../_parts/shop-now";
import type { ListingPostage } from "./likely-postage";
import { zoneShares } from "./zone-shares";

const DAYS_OF_ZONES = 182;

/**
 * The rate card of the main service that holds today, and where parcels went in the last half year.
 *
 * @param shopNow the open database, the shop and its day
 * @returns the card and the zones; `hasZones` is false where no parcel tells
 */
export async function readListingPostage({
  db,
  shop,
  today,
}: ShopNow): Promise<{ readonly postage: ListingPostage; readonly hasZones: boolean }> {
  const [cards, counts] = await Promise.all([
    rateCardsOf(db, shop),
    parcelCountsOf(db, { from: addDays(today, -DAYS_OF_ZONES), to: today }),
  ]);
  const card = mainCardOn(cards, today)?.card ?? null;
  const { zones, isKnown } = zoneShares(card?.zones ?? [], counts);
  return { postage: { card, zones }, hasZones: isKnown };
}
