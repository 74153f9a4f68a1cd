import { cartonFit } from "#lib/cartons/fit/carton-fit";
import { QUICK_EFFORT } from "#lib/cartons/fit/fit-effort";
import type { CushionStyle } from "#lib/packing/recipe-version";
import type { ItemType } from "#prisma/records/item-types";
import type { Supply } from "#prisma/records/supplies";
import { type WrapGround, wrappedType } from "../cartons/wrapped-type";

/** A carton to use up first, and how many pieces of an item type go in it with their cushion; types that don't are left out. */
export type UseFirstOffer = {
  readonly cartonId: string;
  readonly pieces: Readonly<Record<string, number>>;
};

const MOST_PIECES = 4;

/**
 * Which pieces go in the cartons that the seller wants used up.
 *
 * @param cartons those to use first, with their inside sizes
 * @param itemTypes what is packed
 * @param style the shop's usual cushion style
 * @param ground habits and supplies
 */
export function useFirstOffers(
  cartons: readonly Supply[],
  itemTypes: readonly ItemType[],
  style: CushionStyle,
  ground: WrapGround,
): UseFirstOffer[] {
  return cartons.flatMap(({ id, lengthUm, widthUm, heightUm }) => {
    if (lengthUm === null || widthUm === null || heightUm === null) return [];
    const inside = { lengthUm, widthUm, heightUm };
    const pieces = itemTypes.flatMap((type) => {
      const wrapped = wrappedType(type, style, ground);
      if (wrapped === null) return [];
      const { blocks, cushionUm } = wrapped;
      const clearance = { wallsUm: cushionUm, baseUm: cushionUm, topUm: cushionUm };
      const fits = (count: number) => {
        const all = Array.from({ length: count }, () => blocks).flat();
        return cartonFit({ pieces: all, inside, clearance }, QUICK_EFFORT).kind === "fits";
      };
      let most = 0;
      while (most < MOST_PIECES && fits(most + 1)) most += 1;
      return most === 0 ? [] : [[type.id, most] as const];
    });
    return pieces.length === 0 ? [] : [{ cartonId: id, pieces: Object.fromEntries(pieces) }];
  });
}
