import type { PlacedSides } from "#lib/cartons/fit/fit-problem";
import { AXES, type Axis, type Sides } from "#lib/cartons/fit/sides";

/**
 * The corners at which a block more may be tried once this one is placed: each of its far corners, slid back along the two
 * other axes until a block or the wall stops it.
 *
 * @param block - the block, micrometres
 * @param placed - all blocks in the room, it among them; no two overlap
 * @returns six corners, some of them perhaps alike or inside a block
 * @see Crainic, Perboli & Tadei (2008), Extreme point-based heuristics for three-dimensional bin packing; from memory
 * @example extremePoints(block, [block])[0] // [2, 0, 0] for a block of 2 x 3 x 4 at the origin
 */
export function extremePoints({ sides, at }: PlacedSides, placed: readonly PlacedSides[]): Sides[] {
  return AXES.flatMap((axis) => {
    const corner = withSide(at, axis, at[axis] + sides[axis]);
    return AXES.filter((other) => other !== axis).map((other) =>
      withSide(corner, other, slidBack(placed, corner, other)),
    );
  });
}

/** How far back along an axis a point slides: to the furthest face before it that it would hit. */
function slidBack(placed: readonly PlacedSides[], point: Sides, axis: Axis): number {
  let stop = 0;
  for (const { sides, at } of placed) {
    const face = at[axis] + sides[axis];
    const isInTheWay = AXES.every(
      (other) => other === axis || (at[other] <= point[other] && point[other] < at[other] + sides[other]),
    );
    if (isInTheWay && face <= point[axis] && face > stop) stop = face;
  }
  return stop;
}

function withSide(sides: Sides, axis: Axis, value: number): Sides {
  const [length, width, height] = sides;
  if (axis === 0) return [value, width, height];
  return axis === 1 ? [length, value, height] : [length, width, value];
}
