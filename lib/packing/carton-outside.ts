import type { Block } from "#lib/packing/block";

/**
 * The outside of a slotted carton: two walls on length and width, four flaps on height.
 *
 * @param inside - inside sizes in micrometres
 * @param boardUm - thickness of the board in micrometres, zero or more
 * @returns the outside sizes
 * @throws RangeError if the board is below zero or no number
 * @see derived from how a slotted carton folds
 * @example cartonOutside({ lengthUm: 304800, widthUm: 304800, heightUm: 304800 }, 3969).heightUm // 320676
 */
export function cartonOutside(inside: Block, boardUm: number): Block {
  if (!(boardUm >= 0 && Number.isFinite(boardUm))) {
    throw new RangeError(`cartonOutside requires a board from zero, got ${boardUm}`);
  }
  return {
    lengthUm: inside.lengthUm + 2 * boardUm,
    widthUm: inside.widthUm + 2 * boardUm,
    heightUm: inside.heightUm + 4 * boardUm,
  };
}
