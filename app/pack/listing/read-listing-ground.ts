import { habitsOf } from "#prisma/records/habits";
import { suppliesOf } from "#prisma/records/supplies";
import type { ShopNow } from "../../_parts/shop-now";
import { draftShelf } from "../../recipes/[id]/draft/draft-shelf";
import { supplyTerms } from "../../recipes/supply-terms";
import type { PackingChoices } from "../packing-choices";
import { readPackingChoices } from "../read-packing-choices";
import type { ListingPostage } from "./likely-postage";
import { readListingPostage } from "./read-listing-postage";
import type { SizesGround } from "./sizes-answer";

/** All that a promise is reckoned from, as the shop stands now. */
export type ListingGround = SizesGround & {
  readonly choices: PackingChoices;
  readonly postage: ListingPostage;
  /** Whether parcels tell where the next one goes. */
  readonly hasZones: boolean;
};

/**
 * Reads what a promise is reckoned from.
 *
 * @param bench the open database, the shop and its day
 */
export async function readListingGround(bench: ShopNow): Promise<ListingGround> {
  const { db } = bench;
  const [choices, postage, habits, supplies] = await Promise.all([
    readPackingChoices(bench),
    readListingPostage(bench),
    habitsOf(db),
    suppliesOf(db),
  ]);
  return {
    choices,
    ...postage,
    habits,
    shelf: draftShelf(supplies),
    terms: await supplyTerms(db, supplies),
  };
}
