import { habitsOf } from "#prisma/records/habits";
import type { ItemType } from "#prisma/records/item-types";
import { rememberedUntilWritten } from "#prisma/records/remembered";
import type { Stock, Supply } from "#prisma/records/supplies";
import type { ShopNow } from "../_parts/shop-now";
import { draftShelf } from "../recipes/[id]/draft/draft-shelf";
import { styleFrom } from "./style-from";
import { type UseFirstOffer, useFirstOffers } from "./use-first-offers";

/**
 * The cartons that the seller wants used up, as far as some are there, with what goes in them.
 *
 * @param shopNow the open database and the shop
 * @param shelf what was read of it already
 */
export async function readUseFirst(
  { db, shop }: Pick<ShopNow, "db" | "shop">,
  shelf: {
    readonly supplies: readonly Supply[];
    readonly stock: readonly Stock[];
    readonly itemTypes: readonly ItemType[];
  },
): Promise<readonly UseFirstOffer[]> {
  const held = new Set(shelf.stock.filter(({ amount }) => amount > 0).map(({ supplyId }) => supplyId));
  const supplies = shelf.supplies.filter(({ retired }) => !retired);
  const cartons = supplies.filter(({ id, kind, useFirst }) => kind === "carton" && useFirst && held.has(id));
  if (cartons.length === 0) return [];
  return rememberedUntilWritten(db, "cartons to use first", async () =>
    useFirstOffers(cartons, shelf.itemTypes, styleFrom(shop.defaultStyle), {
      habits: await habitsOf(db),
      shelf: draftShelf(supplies),
      measures: shop.measures,
    }),
  );
}
