import type { FitQuestion } from "#lib/cartons/fit/fit-question";
import { AXES, type Axis, type Sides, sidesBlock } from "#lib/cartons/fit/sides";
import { evenRandom } from "#lib/statistics/even-random";
import type { Random } from "#lib/statistics/normal-draw";

const SHORTEST_UM = 200_000;
const LONGEST_UM = 600_000;
/** A cut leaves at least a quarter on each side. */
const LEAST_PART = 0.25;
/** How often the largest part is cut, and not any. */
const LARGEST = 0.6;

/**
 * Pieces that surely fit: a box with sides of 20 to 60 cm, cut straight through again and again, one part in two at a time.
 * Six times in ten the largest part is cut, else any; across an axis drawn in proportion to its sides, at a quarter to three
 * quarters of it. Then the box grows on all sides alike till the pieces fill the wanted share.
 *
 * @param seed whole number
 * @param count pieces
 * @param fill share of the box that the pieces fill, above 0, at most 1
 * @returns the question, no clearance, all pieces free to turn
 */
export function cutSet(seed: number, count: number, fill: number): FitQuestion {
  const random = evenRandom(seed);
  const box = drawnBox(random);
  return grown(box, cutFurther([box], count, random), fill);
}

/**
 * Pieces that surely fit, though no straight cut goes through: four parts round a fifth, each with its end at the side of
 * the next, then cut further as in `cutSet`.
 *
 * @param seed whole number
 * @param count pieces, from 5
 * @param fill share of the box that the pieces fill, above 0, at most 1
 * @returns the question, no clearance, all pieces free to turn
 */
export function pinwheelSet(seed: number, count: number, fill: number): FitQuestion {
  const random = evenRandom(seed);
  const box = drawnBox(random);
  const [length, width, height] = box;
  const between = (whole: number, from: number, to: number): number =>
    Math.round(whole * (from + (to - from) * random()));
  const [x1, x2] = [between(length, LEAST_PART, 0.45), between(length, 0.55, 1 - LEAST_PART)];
  const [y1, y2] = [between(width, LEAST_PART, 0.45), between(width, 0.55, 1 - LEAST_PART)];
  const parts: Sides[] = [
    [x2, y1, height],
    [length - x2, y2, height],
    [length - x1, width - y2, height],
    [x1, width - y1, height],
    [x2 - x1, y2 - y1, height],
  ];
  return grown(box, cutFurther(parts, count, random), fill);
}

function drawnBox(random: Random): Sides {
  const side = (): number => Math.round(SHORTEST_UM + (LONGEST_UM - SHORTEST_UM) * random());
  return [side(), side(), side()];
}

function cutFurther(given: readonly Sides[], count: number, random: Random): Sides[] {
  const parts = [...given];
  while (parts.length < count) {
    parts.sort((a, b) => b[0] * b[1] * b[2] - a[0] * a[1] * a[2]);
    const at = random() < LARGEST ? 0 : Math.floor(random() * parts.length);
    parts.push(...parts.splice(at, 1).flatMap((part) => cut(part, random)));
  }
  return parts;
}

function grown(box: Sides, parts: readonly Sides[], fill: number): FitQuestion {
  const growth = Math.cbrt(1 / fill);
  const [length, width, height] = box;
  return {
    pieces: parts.map((sides) => ({ block: sidesBlock(sides), upright: false })),
    inside: sidesBlock([
      Math.round(length * growth),
      Math.round(width * growth),
      Math.round(height * growth),
    ]),
    clearance: { wallsUm: 0, baseUm: 0, topUm: 0 },
  };
}

function cut(part: Sides, random: Random): Sides[] {
  const axis = drawnAxis(part, random);
  const front = Math.round(part[axis] * (LEAST_PART + (1 - 2 * LEAST_PART) * random()));
  return [front, part[axis] - front].map((side): Sides => {
    const [length, width, height] = part;
    if (axis === 0) return [side, width, height];
    return axis === 1 ? [length, side, height] : [length, width, side];
  });
}

function drawnAxis(sides: Sides, random: Random): Axis {
  let left = random() * (sides[0] + sides[1] + sides[2]);
  for (const axis of AXES) {
    left -= sides[axis];
    if (left < 0) return axis;
  }
  return 2;
}
