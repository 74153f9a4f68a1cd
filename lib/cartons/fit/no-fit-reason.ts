import type { FitProblem } from "#lib/cartons/fit/fit-problem";
import { AXES, type Sides, sidesBlock } from "#lib/cartons/fit/sides";
import { blockVolume } from "#lib/packing/block";

/** Why pieces do not fit; pieces by their place in the list that was asked about, from 0. */
export type NoFitReason =
  /** the clearance leaves nothing of the carton */
  | { readonly kind: "no-room" }
  /** this piece alone is too large in every turn */
  | { readonly kind: "piece-too-large"; readonly piece: number }
  /** together they are larger than the room */
  | { readonly kind: "volume"; readonly piecesMl: number; readonly roomMl: number }
  /** these two find no room one beside, behind or above the other, in any turn */
  | { readonly kind: "two-too-large"; readonly pieces: readonly [number, number] }
  /** measured by what goes in a row, they take more than the room: this share of it, above 1 */
  | { readonly kind: "rows"; readonly share: number }
  /** every arrangement was gone through */
  | { readonly kind: "all-searched"; readonly states: number };

/**
 * A plain reason why blocks cannot fit a room, found without a search.
 *
 * @param problem - room and blocks, micrometres
 * @returns the first reason of: no room, a block alone, the volume, a pair; blocks by their place in the problem. Null
 *   where none of them speaks, which proves nothing
 * @example noFitReason({ room: [11, 11, 11], pieces: [[[6, 6, 6]], [[6, 6, 6]]] }) // two-too-large, [0, 1]
 */
export function noFitReason({ room, pieces }: FitProblem): NoFitReason | null {
  if (room.some((side) => side <= 0)) return { kind: "no-room" };
  const fitting = pieces.map((turns) =>
    turns.filter((turn) => AXES.every((axis) => turn[axis] <= room[axis])),
  );
  const alone = fitting.findIndex((turns) => turns.length === 0);
  if (alone >= 0) return { kind: "piece-too-large", piece: alone };
  return tooMuchVolume(room, pieces) ?? tooLargePair(room, fitting);
}

function tooMuchVolume(room: Sides, pieces: FitProblem["pieces"]): NoFitReason | null {
  const blocks = pieces.flatMap((turns) => turns.slice(0, 1));
  // Exact: cubic micrometres go beyond what a double holds.
  const exact = ([length, width, height]: Sides): bigint => BigInt(length) * BigInt(width) * BigInt(height);
  if (blocks.reduce((sum, block) => sum + exact(block), 0n) <= exact(room)) return null;
  const ml = (sides: Sides): number => blockVolume(sidesBlock(sides));
  return { kind: "volume", piecesMl: blocks.reduce((sum, block) => sum + ml(block), 0), roomMl: ml(room) };
}

function tooLargePair(room: Sides, fitting: FitProblem["pieces"]): NoFitReason | null {
  const shortest = fitting.map((turns) => AXES.map((axis) => Math.min(...turns.map((turn) => turn[axis]))));
  for (const [first, one] of shortest.entries()) {
    for (const [at, other] of shortest.slice(first + 1).entries()) {
      const isApart = AXES.some((axis) => (one[axis] ?? 0) + (other[axis] ?? 0) <= room[axis]);
      if (!isApart) return { kind: "two-too-large", pieces: [first, first + 1 + at] };
    }
  }
  return null;
}
