import { type Block, blockVolume } from "#lib/packing/block";
import { type CartonRoom, standingRoom, turnedBlocks } from "#lib/packing/fill/carton-room";
import { type Grid, gridBlock, gridsOf } from "#lib/packing/set/grid-blocks";

/** How a set stands in a carton. */
export type SetRoom = { readonly room: CartonRoom; readonly grid: Grid; readonly loadMl: number };

/**
 * The room that a set of equal wrapped pieces leaves in a carton, each turned the same way, in the grid whose tightest side
 * leaves most (fewer tiers where two leave as much). What is
 * packed apart with each piece (a wrapped lid) stands beside the pieces, or on them, wherever that leaves most.
 *
 * @param inside - inside of the carton in micrometres
 * @param set - `block` around one wrapped piece, whole pieces from 1, `apart` from each (null if nothing), divider
 *   thickness in micrometres, `thisSideUp`
 * @param askedUm - clearance asked for on every side
 * @returns room, grid, and the millilitres that the wrapped pieces take
 * @throws RangeError if a number is not as said
 * @see computed from the geometry; the void counts all room between the pieces as room to fill
 * @example setRoom(carton, { block: cup, pieces: 6, apart: null, wallUm: 0, thisSideUp: true }, 50800).grid
 */
export function setRoom(
  inside: Block,
  set: {
    readonly block: Block;
    readonly pieces: number;
    readonly apart: Block | null;
    readonly wallUm: number;
    readonly thisSideUp: boolean;
  },
  askedUm: number,
): SetRoom {
  const { block, apart, pieces, wallUm, thisSideUp } = set;
  const loadMl = pieces * (blockVolume(block) + (apart === null ? 0 : blockVolume(apart)));
  const cells = cellBlocks(block, apart).flatMap((cell) => turnedBlocks(cell, thisSideUp));
  const rooms = gridsOf(pieces).flatMap((grid) =>
    cells.map((cell): SetRoom => {
      const load = { block: gridBlock(cell, grid, wallUm), ml: loadMl };
      return { room: standingRoom(inside, load, askedUm), grid, loadMl };
    }),
  );
  return rooms.reduce((best, each) => (each.room.leavesUm > best.room.leavesUm ? each : best));
}

/** One piece with what is apart from it: beside it along the length or the width, or upon it. */
function cellBlocks(block: Block, apart: Block | null): readonly Block[] {
  if (apart === null) return [block];
  const lengthUm = Math.max(block.lengthUm, apart.lengthUm);
  const widthUm = Math.max(block.widthUm, apart.widthUm);
  const heightUm = Math.max(block.heightUm, apart.heightUm);
  return [
    { lengthUm: block.lengthUm + apart.lengthUm, widthUm, heightUm },
    { lengthUm, widthUm: block.widthUm + apart.widthUm, heightUm },
    { lengthUm, widthUm, heightUm: block.heightUm + apart.heightUm },
  ];
}
