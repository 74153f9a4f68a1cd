import type { Block } from "#lib/packing/block";

/** A side of a carton. */
export type CartonSide = "length" | "width" | "height";

/** How many thicknesses of board lie on a side: two walls, or the four flaps of top and bottom. */
const LAYERS: readonly (readonly [side: CartonSide, field: keyof Block, layers: number])[] = [
  ["length", "lengthUm", 2],
  ["width", "widthUm", 2],
  ["height", "heightUm", 4],
];

/** Triple wall of three A flutes is the thickest board there is. */
const THICKEST_UM = 15_000;

type InsideReading =
  | { readonly kind: "sizes"; readonly inside: Block }
  | { readonly kind: "noRoom"; readonly side: CartonSide };

/**
 * The inside of a carton that was measured outside, flat and empty.
 *
 * @param outside sizes in micrometres
 * @param boardUm thickness of the board in micrometres, from zero
 * @returns the inside sizes, or the first side on which the board leaves no room
 * @throws RangeError if the board is below zero
 * @see derived from how a slotted carton folds; the way back from `cartonOutside`
 * @example insideSizes({ lengthUm: 312738, widthUm: 312738, heightUm: 320676 }, 3969) // 304800 each
 */
export function insideSizes(outside: Block, boardUm: number): InsideReading {
  if (!(boardUm >= 0 && Number.isFinite(boardUm))) {
    throw new RangeError(`insideSizes requires a board from zero, got ${boardUm}`);
  }
  const full = LAYERS.find(([, field, layers]) => !(outside[field] > layers * boardUm));
  if (full !== undefined) return { kind: "noRoom", side: full[0] };
  return {
    kind: "sizes",
    inside: {
      lengthUm: outside.lengthUm - 2 * boardUm,
      widthUm: outside.widthUm - 2 * boardUm,
      heightUm: outside.heightUm - 4 * boardUm,
    },
  };
}

type BoardReading =
  | { readonly kind: "board"; readonly leastUm: number; readonly mostUm: number }
  | { readonly kind: "notAboveZero" | "insideNotSmaller" | "tooThick"; readonly side: CartonSide };

/**
 * Whether inside and outside sizes can be those of one carton, and how thick its board then is.
 *
 * @param inside sizes in micrometres
 * @param outside sizes in micrometres, in the same order
 * @returns the thickness that the sides tell, least and most; or the first side that is wrong and how
 * @see derived from how a slotted carton folds; the thickest board is three A flutes
 * @example boardBetween(cube12, { lengthUm: 312738, widthUm: 312738, heightUm: 320676 }) // 3969 to 3969
 */
export function boardBetween(inside: Block, outside: Block): BoardReading {
  const boards: number[] = [];
  for (const [side, field, layers] of LAYERS) {
    const boardUm = (outside[field] - inside[field]) / layers;
    if (!(inside[field] > 0 && outside[field] > 0)) return { kind: "notAboveZero", side };
    if (boardUm <= 0) return { kind: "insideNotSmaller", side };
    if (boardUm > THICKEST_UM) return { kind: "tooThick", side };
    boards.push(boardUm);
  }
  return { kind: "board", leastUm: Math.min(...boards), mostUm: Math.max(...boards) };
}
