import { holdsOn } from "#lib/postage/card-on";
import { addDays } from "#lib/units/day";
import { habitsOf } from "#prisma/records/habits";
import { parcelCountsOf } from "#prisma/records/parcel-lists";
import { rateCardsOf } from "#prisma/records/rate-cards";
import { suppliesOf } from "#prisma/records/supplies";
import type { ShopNow } from "../../_parts/shop-now";
import { draftShelf } from "../../recipes/[id]/draft/draft-shelf";
import { supplyTerms } from "../../recipes/supply-terms";
import type { PackingChoices } from "../packing-choices";
import { readPackingChoices } from "../read-packing-choices";
import type { ListingPostage } from "./likely-postage";
import type { SizesGround } from "./sizes-answer";
import { zoneShares } from "./zone-shares";

/** All that a promise is reckoned from, as the shop stands now. */
export type ListingGround = SizesGround & {
  readonly choices: PackingChoices;
  readonly postage: ListingPostage;
  /** Whether parcels tell where the next one goes. */
  readonly hasZones: boolean;
};

const DAYS_OF_ZONES = 182;

/**
 * Reads what a promise is reckoned from.
 *
 * @param bench the open database, the shop and its day
 */
export async function readListingGround(bench: ShopNow): Promise<ListingGround> {
  const { db, shop, today } = bench;
  const [choices, cards, counts, habits, supplies] = await Promise.all([
    readPackingChoices(bench),
    rateCardsOf(db, shop),
    parcelCountsOf(db, { from: addDays(today, -DAYS_OF_ZONES), to: today }),
    habitsOf(db),
    suppliesOf(db),
  ]);
  const card = cards.find((each) => holdsOn(each, today))?.card ?? null;
  const { zones, isKnown } = zoneShares(card?.zones ?? [], counts);
  return {
    choices,
    postage: { card, zones },
    hasZones: isKnown,
    habits,
    shelf: draftShelf(supplies),
    terms: await supplyTerms(db, supplies),
  };
}
