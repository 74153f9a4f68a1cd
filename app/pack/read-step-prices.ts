import { cartonSettingsOf } from "#prisma/records/carton-terms";
import { habitsOf } from "#prisma/records/habits";
import type { ItemType } from "#prisma/records/item-types";
import { rememberedUntilWritten } from "#prisma/records/remembered";
import type { Supply } from "#prisma/records/supplies";
import type { ShopNow } from "../_parts/shop-now";
import { outsideSizes } from "../cartons/outside-sizes";
import { readListingPostage } from "./listing/read-listing-postage";
import { type StepPrices, stepPrices } from "./step-prices";

/** Pieces of the heaviest type that a parcel may hold, and what packing may weigh: beyond it the bench need not look. */
const MOST_PIECES = 6;
const MOST_PACKING_MG = 5_000_000;

/**
 * What parcels pay by weight today, for the bench.
 *
 * @param shopNow the open database, the shop and its day
 * @param shelf what was read of it already
 * @returns null without a rate card
 */
export async function readStepPrices(
  shopNow: ShopNow,
  { supplies, itemTypes }: { readonly supplies: readonly Supply[]; readonly itemTypes: readonly ItemType[] },
): Promise<StepPrices | null> {
  const { db, today } = shopNow;
  return rememberedUntilWritten(db, JSON.stringify(["step prices", today]), async () => {
    const [{ postage }, habits, { settings }] = await Promise.all([
      readListingPostage(shopNow),
      habitsOf(db),
      cartonSettingsOf(db),
    ]);
    const heaviest = Math.max(0, ...itemTypes.map(({ massMg }) => massMg ?? 0));
    const sizes = outsideSizes(supplies, settings.bulgeUm, habits.boardPoundsPerSquareFoot);
    return stepPrices(postage.card, postage.zones, sizes, {
      shipDay: today,
      untilMg: MOST_PIECES * heaviest + MOST_PACKING_MG,
    });
  });
}
