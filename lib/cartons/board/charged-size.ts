import type { Block } from "#lib/packing/block";
import { blockAround } from "#lib/packing/block";
import { cartonOutside } from "#lib/packing/carton-outside";
import { type ParcelSize, parcelSize } from "#lib/postage/parcel-size";
import { micrometres } from "#lib/units/length";

/** What lies between the inside of a carton and the size that is charged, in micrometres from zero. */
export type CartonSkin = {
  readonly boardUm: number;
  /** how far each wall bows out when packed */
  readonly bulgeUm: number;
};

/** How far walls bow out: nothing is assumed, as no figure was found. Measure a packed carton at its widest. */
export const USUAL_BULGE_UM = 0;

/**
 * The outside of a packed carton at its widest: board, flaps and the bulge of each wall.
 *
 * @param inside sizes in micrometres, above zero
 * @param skin board and bulge
 * @returns outside sizes in micrometres
 * @throws RangeError if a size is not above zero, or board or bulge below zero
 * @see derived from how a slotted carton folds
 * @example packedOutside(cube12, { boardUm: 3969, bulgeUm: 0 }).heightUm // 320676
 */
export function packedOutside(inside: Block, { boardUm, bulgeUm }: CartonSkin): Block {
  const wrong = [inside.lengthUm, inside.widthUm, inside.heightUm].find((side) => !(side > 0));
  if (wrong !== undefined) throw new RangeError(`packedOutside requires sizes above zero, got ${wrong}`);
  return blockAround(cartonOutside(inside, boardUm), bulgeUm);
}

/**
 * The size that postage is charged for: outside, at the bulge. A carton sold as 12 x 12 x 12 is larger than that.
 *
 * @param inside sizes in micrometres, above zero
 * @param skin board and bulge
 * @returns outside sizes to the nearest micrometre, as rate cards take them
 * @throws RangeError if a size is not above zero, or board or bulge below zero
 * @example chargedSize(cube12, { boardUm: 3969, bulgeUm: 0 }).um // [312738, 312738, 320676]
 */
export function chargedSize(inside: Block, skin: CartonSkin): ParcelSize {
  const { lengthUm, widthUm, heightUm } = packedOutside(inside, skin);
  const um = [lengthUm, widthUm, heightUm].map((side) => micrometres(Math.round(side)));
  return parcelSize(um, null, "box");
}
