import { chargedSize } from "#lib/cartons/board/charged-size";
import type { ParcelSize } from "#lib/postage/parcel-size";
import type { PaidRow } from "#prisma/records/paid-parcels";
import type { Supply } from "#prisma/records/supplies";
import { boardUmOf, sizedCarton } from "../cartons/carton-board";
import { sizeOfBlock } from "../cartons/outside-sizes";

/** What the outside of a carton is worked out from. */
export type OutsideGround = {
  readonly cartons: readonly Supply[];
  /** how far each wall bows out when packed, micrometres */
  readonly bulgeUm: number;
  readonly boardPoundsPerSquareFoot: number;
};

/**
 * The size that postage is charged for: the outside of the outermost carton, cut down where it was.
 *
 * @param carton of a parcel; null: none
 * @param ground cartons of the shop, and what is between inside and outside
 * @returns null where its sizes are not known
 */
export function outsideSize(carton: PaidRow["carton"], ground: OutsideGround): ParcelSize | null {
  if (carton === null) return null;
  if (carton.supplyId === null)
    return carton.sizesUm === null ? null : oddSize(carton.sizesUm, ground.bulgeUm);
  const supply = ground.cartons.find(({ id }) => id === carton.supplyId);
  const sized =
    supply === undefined ? null : sizedCarton(supply, ground.bulgeUm, ground.boardPoundsPerSquareFoot);
  if (sized === null) return null;
  const { inside, outside } = sized;
  const cut = carton.cutHeightUm === null ? 0 : Math.max(0, inside.heightUm - carton.cutHeightUm);
  return sizeOfBlock({ ...outside, heightUm: outside.heightUm - cut });
}

/** An odd carton was measured inside, as cartons are; its board is taken as the usual single wall. */
function oddSize(
  [lengthUm, widthUm, heightUm]: readonly [number, number, number],
  bulgeUm: number,
): ParcelSize {
  const boardUm = boardUmOf({ wall: null, flutes: null });
  return chargedSize({ lengthUm, widthUm, heightUm }, { boardUm, bulgeUm });
}
