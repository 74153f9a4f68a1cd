import { extremePoints } from "#lib/cartons/fit/extreme-points";
import type { FitProblem, PlacedSides } from "#lib/cartons/fit/fit-problem";
import { AXES, type Axis, type Sides } from "#lib/cartons/fit/sides";

/** How one pass goes about it. */
export type GreedyPass = {
  /** blocks of the problem in the order in which they are placed */
  readonly order: readonly number[];
  /** along which axis to keep lowest, then which, then which */
  readonly axes: readonly [Axis, Axis, Axis];
  /** what to keep low: the block's far corner or its near one */
  readonly keep: "far" | "near";
};

/**
 * Places blocks one after the other, each where it keeps lowest among all extreme points and turns that are free.
 *
 * @param problem - room and blocks, micrometres
 * @param pass - order, axes, what to keep low
 * @returns a place for each block of the problem, or null where one found none
 * @see Crainic, Perboli & Tadei (2008); from memory, choice of the point our own
 * @example greedyPacking(problem, { order: [0, 1], axes: [2, 1, 0], keep: "near" })
 */
export function greedyPacking({ room, pieces }: FitProblem, pass: GreedyPass): PlacedSides[] | null {
  const placed: PlacedSides[] = [];
  const byBlock = new Map<number, PlacedSides>();
  const points = new Map<string, Sides>([["0,0,0", [0, 0, 0]]]);
  for (const block of pass.order) {
    const tried = [...points.values()].flatMap((at) => (pieces[block] ?? []).map((sides) => ({ sides, at })));
    const lowest = lowestPlace(room, placed, tried, pass);
    if (lowest === null) return null;
    placed.push(lowest);
    byBlock.set(block, lowest);
    for (const point of extremePoints(lowest, placed)) points.set(point.join(), point);
  }
  return pieces.flatMap((_, block) => byBlock.get(block) ?? []);
}

function lowestPlace(
  room: Sides,
  placed: readonly PlacedSides[],
  places: readonly PlacedSides[],
  pass: GreedyPass,
): PlacedSides | null {
  let lowest: PlacedSides | null = null;
  for (const tried of places) {
    const isLower = lowest === null || keepsLower(tried, lowest, pass);
    if (isLower && isFree(room, placed, tried)) lowest = tried;
  }
  return lowest;
}

function keepsLower(one: PlacedSides, other: PlacedSides, { axes, keep }: GreedyPass): boolean {
  for (const axis of axes) {
    const difference = keep === "near" ? one.at[axis] - other.at[axis] : far(one, axis) - far(other, axis);
    if (difference !== 0) return difference < 0;
  }
  for (const axis of axes) {
    const difference = far(one, axis) - far(other, axis);
    if (difference !== 0) return difference < 0;
  }
  return false;
}

const far = ({ sides, at }: PlacedSides, axis: Axis): number => at[axis] + sides[axis];

function isFree(room: Sides, placed: readonly PlacedSides[], tried: PlacedSides): boolean {
  if (AXES.some((axis) => far(tried, axis) > room[axis])) return false;
  return placed.every((other) =>
    AXES.some((axis) => far(other, axis) <= tried.at[axis] || far(tried, axis) <= other.at[axis]),
  );
}
