import type { Block } from "#lib/packing/block";
import { type ParcelSize, parcelSize } from "#lib/postage/parcel-size";
import { micrometres } from "#lib/units/length";
import type { Supply } from "#prisma/records/supplies";
import { sizedCarton } from "./carton-board";

/**
 * Outside sizes of packed cartons, as they are charged.
 *
 * @param supplies of the shop
 * @param bulgeUm how far a packed wall bows out
 * @param boardPounds pounds a square foot of single wall board
 * @returns by carton; those without inside sizes are not in it
 */
export function outsideSizes(
  supplies: readonly Supply[],
  bulgeUm: number,
  boardPounds: number,
): ReadonlyMap<string, ParcelSize> {
  return new Map(
    supplies.flatMap((supply) => {
      if (supply.kind !== "carton") return [];
      const carton = sizedCarton(supply, bulgeUm, boardPounds);
      if (carton === null) return [];
      return [[supply.id, sizeOfBlock(carton.outside)] as const];
    }),
  );
}

/**
 * A box as a parcel that postage is asked for.
 *
 * @param block outside, micrometres; fractions are rounded
 */
export function sizeOfBlock({ lengthUm, widthUm, heightUm }: Block): ParcelSize {
  return parcelSize(
    [lengthUm, widthUm, heightUm].map((side) => micrometres(Math.round(side))),
    null,
    "box",
  );
}
