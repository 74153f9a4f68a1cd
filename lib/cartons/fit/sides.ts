import type { Block } from "#lib/packing/block";

/** Three sides or a corner along length, width and height, in micrometres. */
export type Sides = readonly [length: number, width: number, height: number];

/** The three axes: 0 along the length, 1 along the width, 2 up. */
export const AXES = [0, 1, 2] as const;
export type Axis = (typeof AXES)[number];

/**
 * The sides of a block as a list.
 *
 * @param block - sides in micrometres
 * @returns length, width and height
 * @example blockSides({ lengthUm: 3, widthUm: 2, heightUm: 1 }) // [3, 2, 1]
 */
export function blockSides(block: Block): Sides {
  return [block.lengthUm, block.widthUm, block.heightUm];
}

/**
 * A list of sides as a block.
 *
 * @param sides - length, width and height in micrometres
 * @returns the block
 * @example sidesBlock([3, 2, 1]) // { lengthUm: 3, widthUm: 2, heightUm: 1 }
 */
export function sidesBlock([lengthUm, widthUm, heightUm]: Sides): Block {
  return { lengthUm, widthUm, heightUm };
}
