import type { FitProblem } from "#lib/cartons/fit/fit-problem";
import type { GreedyPass } from "#lib/cartons/fit/greedy-packing";
import type { Axis, Sides } from "#lib/cartons/fit/sides";
import type { Random } from "#lib/statistics/normal-draw";

const AXIS_ORDERS: readonly GreedyPass["axes"][] = [
  [2, 1, 0],
  [2, 0, 1],
  [1, 2, 0],
  [1, 0, 2],
  [0, 2, 1],
  [0, 1, 2],
];
const KEEPS = ["near", "far"] as const;

/**
 * Passes worth trying: blocks by volume, by longest side and by largest face, largest first, from each turn of the room.
 *
 * @param problem - room and blocks
 * @returns 36 passes
 */
export function greedyPasses({ pieces }: FitProblem): GreedyPass[] {
  const sizes = [volume, longestSide, largestFace];
  const orders = sizes.map((size) => {
    const measured = pieces.map((turns) => Math.max(...turns.map(size)));
    return [...measured.keys()].toSorted((a, b) => (measured[b] ?? 0) - (measured[a] ?? 0));
  });
  return orders.flatMap((order) =>
    KEEPS.flatMap((keep) => AXIS_ORDERS.map((axes) => ({ order, axes, keep }))),
  );
}

/**
 * A pass by chance: any order, any turn of the room.
 *
 * @param blocks - how many
 * @param random - source of chance
 * @returns the pass
 */
export function shuffledPass(blocks: number, random: Random): GreedyPass {
  const order = Array.from({ length: blocks }, (_, block) => ({ block, draw: random() }))
    .toSorted((a, b) => a.draw - b.draw)
    .map(({ block }) => block);
  const at = Math.floor(random() * AXIS_ORDERS.length);
  return { order, axes: AXIS_ORDERS[at] ?? UPWARDS, keep: random() < 0.5 ? "near" : "far" };
}

const UPWARDS: readonly [Axis, Axis, Axis] = [2, 1, 0];

const volume = ([length, width, height]: Sides): number => length * width * height;
const longestSide = (sides: Sides): number => Math.max(...sides);
const largestFace = ([length, width, height]: Sides): number =>
  Math.max(length * width, width * height, length * height);
