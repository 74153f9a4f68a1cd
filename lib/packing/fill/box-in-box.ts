import { type Block, blockVolume } from "#lib/packing/block";
import { cartonOutside } from "#lib/packing/carton-outside";
import { type CartonRoom, cartonRoom } from "#lib/packing/fill/carton-room";

/**
 * The room round an inner carton in an outer one.
 *
 * @param inner - inside of the inner carton and thickness of its board, in micrometres
 * @param outer - inside of the outer carton, in micrometres
 * @param asked - gap asked for all round in micrometres, and whether the inner carton must stay this side up
 * @returns an outcome with the void between the two
 * @throws RangeError if a number is below zero
 * @see computed from the geometry
 * @example boxInBox({ inside: cube8, boardUm: 0 }, cube12, { gapUm: 50800, thisSideUp: false }).voidMl
 *   // 19926.7, which is 1216 cu in
 */
export function boxInBox(
  inner: { readonly inside: Block; readonly boardUm: number },
  outer: Block,
  asked: { readonly gapUm: number; readonly thisSideUp: boolean },
): CartonRoom {
  const block = cartonOutside(inner.inside, inner.boardUm);
  return cartonRoom(outer, { block, ml: blockVolume(block), thisSideUp: asked.thisSideUp }, asked.gapUm);
}

/**
 * The least inside of an outer carton that leaves a gap all round an inner one, as it stands.
 *
 * @param inner - inside of the inner carton and thickness of its board, in micrometres
 * @param gapUm - gap asked for on every side, in micrometres, zero or more
 * @returns inside sizes in micrometres
 * @throws RangeError if the board is below zero
 * @see computed from the geometry
 * @example leastOuter({ inside: cube8, boardUm: 0 }, 25400).heightUm // 254000, which is 10 in
 */
export function leastOuter(
  inner: { readonly inside: Block; readonly boardUm: number },
  gapUm: number,
): Block {
  const { lengthUm, widthUm, heightUm } = cartonOutside(inner.inside, inner.boardUm);
  return { lengthUm: lengthUm + 2 * gapUm, widthUm: widthUm + 2 * gapUm, heightUm: heightUm + 2 * gapUm };
}
