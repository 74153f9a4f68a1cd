import type { FitProblem, PlacedSides } from "#lib/cartons/fit/fit-problem";
import { AXES, type Axis, type Sides } from "#lib/cartons/fit/sides";

/** Some blocks together in a box of their own, and how they came together. */
type Group = {
  readonly sides: Sides;
  readonly volume: number;
  readonly made:
    | { readonly block: number }
    | { readonly front: Group; readonly back: Group; readonly axis: Axis };
};

/**
 * Looks for a packing that straight cuts through the whole would take apart again: groups of blocks are set against
 * each other along an axis, from single blocks up to all. Of groups of the same blocks, one that is no shorter on any side
 * than another is dropped, and so is one that wastes more room than the room has to spare.
 *
 * @param problem - room and blocks, micrometres; the work grows as 3 to the power of the blocks
 * @param groupsKept - of the same blocks, those with least waste; where fewer come up, every such packing is looked at
 * @returns a place for each block of the problem, or null where none was found, which proves nothing
 * @example cutPlan({ room: [4, 2, 2], pieces: [[[2, 2, 2]], [[2, 2, 2]]] }, 16)?.[1]?.at // [2, 0, 0]
 */
export function cutPlan({ room, pieces }: FitProblem, groupsKept: number): PlacedSides[] | null {
  const volumes = pieces.map(([turn]) => volumeOf(turn ?? [0, 0, 0]));
  const spare = volumeOf(room) * (1 + ROUNDING) - sum(volumes);
  const all = 2 ** pieces.length - 1;
  const groups: Group[][] = [[]];
  for (let blocks = 1; blocks <= all; blocks++) {
    const kept = singleBlock(room, pieces, blocks);
    const own = sum(volumes.filter((_, block) => blocks & (1 << block)));
    const most = own + spare;
    // Each split once: the front group holds the lowest block.
    const lowest = blocks & -blocks;
    for (let rest = (blocks - 1) & blocks; rest > 0; rest = (rest - 1) & blocks) {
      if (!(rest & lowest)) continue;
      joinAll(groups[rest] ?? [], groups[blocks ^ rest] ?? [], { room, most, kept });
    }
    groups.push(kept.toSorted((a, b) => a.volume - b.volume).slice(0, groupsKept));
  }
  const [found] = groups[all] ?? [];
  return found ? placesOf(found, pieces.length) : null;
}

/** Volumes are sums of large products; this is far above their rounding. */
const ROUNDING = 1e-9;

const volumeOf = ([length, width, height]: Sides): number => length * width * height;
const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0);

function singleBlock(room: Sides, pieces: FitProblem["pieces"], blocks: number): Group[] {
  if ((blocks & (blocks - 1)) !== 0) return [];
  const block = 31 - Math.clz32(blocks);
  return (pieces[block] ?? [])
    .filter((sides) => AXES.every((axis) => sides[axis] <= room[axis]))
    .map((sides) => ({ sides, volume: volumeOf(sides), made: { block } }));
}

type Join = { readonly room: Sides; readonly most: number; readonly kept: Group[] };

function joinAll(fronts: readonly Group[], backs: readonly Group[], { room, most, kept }: Join): void {
  for (const front of fronts) {
    for (const back of backs) {
      for (const axis of AXES) {
        const sides = joined(front.sides, back.sides, axis);
        const volume = volumeOf(sides);
        if (volume > most || sides[0] > room[0] || sides[1] > room[1] || sides[2] > room[2]) continue;
        keepIfNew(kept, { sides, volume, made: { front, back, axis } });
      }
    }
  }
}

function joined(front: Sides, back: Sides, axis: Axis): Sides {
  return [
    axis === 0 ? front[0] + back[0] : Math.max(front[0], back[0]),
    axis === 1 ? front[1] + back[1] : Math.max(front[1], back[1]),
    axis === 2 ? front[2] + back[2] : Math.max(front[2], back[2]),
  ];
}

function keepIfNew(kept: Group[], group: Group): void {
  for (const other of kept) if (isWithin(other.sides, group.sides)) return;
  let left = 0;
  for (const other of kept) {
    if (!isWithin(group.sides, other.sides)) kept[left++] = other;
  }
  kept.length = left;
  kept.push(group);
}

const isWithin = (inner: Sides, outer: Sides): boolean =>
  inner[0] <= outer[0] && inner[1] <= outer[1] && inner[2] <= outer[2];

function placesOf(all: Group, blocks: number): PlacedSides[] {
  const placed = new Map<number, PlacedSides>();
  const set = ({ sides, made }: Group, at: Sides): void => {
    if ("block" in made) {
      placed.set(made.block, { sides, at });
      return;
    }
    set(made.front, at);
    const shift = made.front.sides[made.axis];
    const [x, y, z] = at;
    set(made.back, [
      x + (made.axis === 0 ? shift : 0),
      y + (made.axis === 1 ? shift : 0),
      z + (made.axis === 2 ? shift : 0),
    ]);
  };
  set(all, [0, 0, 0]);
  return Array.from({ length: blocks }, (_, block) => placed.get(block)).filter(
    (place) => place !== undefined,
  );
}
