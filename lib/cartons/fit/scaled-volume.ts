import type { FitProblem } from "#lib/cartons/fit/fit-problem";
import { type LengthScale, longAsWhole, plainShare, roundedShare } from "#lib/cartons/fit/length-scale";
import { AXES, type Axis } from "#lib/cartons/fit/sides";

/**
 * How much of the room the blocks take where the sides along each axis are measured by a scale, each block in the turn in
 * which it takes least: above 1 there is no packing.
 *
 * Why: take a packing, and for each pair an axis on which the two are apart. Blocks one behind the other on an axis are a
 * row in the room, so their shares come to at most 1. Give each block its scaled sides and the least corner that the rows
 * leave: all lie in a room of sides 1, and each pair is still apart on its axis. So this is a packing too, and the volumes
 * come to at most 1.
 *
 * @param problem - room above zero and blocks, micrometres; every block has a turn that fits the room
 * @returns the largest share over triples of scales, not rounded
 * @see Fekete & Schepers (2004), A general framework for bounds for higher-dimensional orthogonal packing problems; from
 *   memory, in words of our own
 * @example scaledVolume({ room: [11, 11, 11], pieces: [[[6, 6, 6]], [[6, 6, 6]]] }) // 2
 */
export function scaledVolume({ room, pieces }: FitProblem): number {
  const fitting = pieces.map((turns) =>
    turns.filter((turn) => AXES.every((axis) => turn[axis] <= room[axis])),
  );
  const lists = AXES.map((axis) => shareLists(room[axis], fitting, axis));
  const [alongs = [], acrosses = [], ups = []] = lists;
  let largest = 0;
  for (const along of alongs) {
    for (const across of acrosses) {
      for (const up of ups) largest = Math.max(largest, sumOfLeast(along, across, up));
    }
  }
  return largest;
}

/** Scales along an axis: more of them find little more, and the triples take time. */
const MOST_LONG_SCALES = 8;
const ROUNDED = [1, 2, 3].map(roundedShare);

/** By block, the shares of its turns along one axis. */
type Shares = readonly (readonly number[])[];

function shareLists(whole: number, pieces: FitProblem["pieces"], axis: Axis): Shares[] {
  const sides = pieces.flat().map((turn) => turn[axis]);
  const shorts = sides.flatMap((side) => [side, whole - side + 1]).filter((short) => 2 * short <= whole);
  const scales: LengthScale[] = [plainShare, ...ROUNDED, ...spreadOut(shorts).map(longAsWhole)];
  const lists = scales.map((scale) => pieces.map((turns) => turns.map((turn) => scale(turn[axis], whole))));
  return [...new Map(lists.map((shares) => [shares.join(";"), shares])).values()];
}

/** Some of the lengths, from the shortest to the longest. */
function spreadOut(lengths: readonly number[]): number[] {
  const sorted = [...new Set(lengths)].toSorted((a, b) => a - b);
  const step = Math.max(1, sorted.length / MOST_LONG_SCALES);
  return sorted.filter((_, at) => Math.floor(at / step) > Math.floor((at - 1) / step));
}

function sumOfLeast(along: Shares, across: Shares, up: Shares): number {
  let sum = 0;
  for (const [block, turns] of along.entries()) {
    let least = Number.POSITIVE_INFINITY;
    for (const [turn, share] of turns.entries()) {
      const volume = share * (across[block]?.[turn] ?? 0) * (up[block]?.[turn] ?? 0);
      if (volume < least) least = volume;
    }
    sum += least;
  }
  return sum;
}
