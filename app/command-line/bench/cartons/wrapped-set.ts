import type { FitQuestion, WrappedPiece } from "#lib/cartons/fit/fit-question";
import { type Sides, sidesBlock } from "#lib/cartons/fit/sides";
import { evenRandom } from "#lib/statistics/even-random";
import type { Random } from "#lib/statistics/normal-draw";

const MICROMETRES_PER_MILLIMETRE = 1000;
const MICROMETRES_PER_INCH = 25_400;

/** Invented: what a seller of crockery and glass has on the shelf, bare sizes in millimetres. */
const KINDS: readonly { readonly sides: Sides; readonly spread: number; readonly upright: number }[] = [
  { sides: [125, 95, 105], spread: 0.15, upright: 0.3 },
  { sides: [270, 270, 28], spread: 0.12, upright: 0.1 },
  { sides: [160, 160, 75], spread: 0.2, upright: 0.3 },
  { sides: [95, 95, 220], spread: 0.2, upright: 0.5 },
  { sides: [85, 85, 180], spread: 0.2, upright: 0.6 },
  { sides: [240, 150, 150], spread: 0.2, upright: 0.6 },
  { sides: [330, 230, 45], spread: 0.2, upright: 0.1 },
  { sides: [80, 60, 60], spread: 0.3, upright: 0.2 },
  { sides: [150, 110, 90], spread: 0.3, upright: 0.2 },
  { sides: [200, 200, 12], spread: 0.2, upright: 0.1 },
];
const WRAPS_MM = [3, 6, 10, 15];
const CLEARANCES_IN = [0, 0.5, 1, 2];
/** How often a set has several of a kind. */
const SEVERAL = 0.4;

/** Inside sizes in inches that many makers of cartons list; common practice, no source. */
export const CARTON_SIZES_IN: readonly Sides[] = [
  [6, 4, 4],
  [6, 6, 6],
  [8, 6, 4],
  [8, 6, 6],
  [8, 8, 4],
  [8, 8, 6],
  [8, 8, 8],
  [9, 6, 4],
  [9, 9, 6],
  [9, 9, 9],
  [10, 6, 4],
  [10, 8, 6],
  [10, 10, 6],
  [10, 10, 8],
  [10, 10, 10],
  [12, 6, 6],
  [12, 9, 4],
  [12, 9, 6],
  [12, 10, 8],
  [12, 12, 6],
  [12, 12, 8],
  [12, 12, 10],
  [12, 12, 12],
  [14, 10, 6],
  [14, 12, 8],
  [14, 14, 8],
  [14, 14, 10],
  [14, 14, 14],
  [15, 12, 10],
  [16, 12, 6],
  [16, 12, 8],
  [16, 12, 12],
  [16, 16, 10],
  [16, 16, 16],
  [18, 12, 6],
  [18, 12, 8],
  [18, 12, 12],
  [18, 14, 12],
  [18, 18, 12],
  [18, 18, 18],
  [20, 14, 10],
  [20, 16, 12],
  [20, 20, 12],
  [20, 20, 20],
  [22, 16, 12],
  [24, 12, 12],
  [24, 16, 12],
  [24, 18, 12],
  [24, 18, 18],
  [24, 24, 24],
];

/** Fill of the room at which yes and no are both to be expected. */
const LEAST_FILL = 0.35;

/**
 * Wrapped pieces and a clearance, drawn from a shelf: sizes differ within a kind, and often several are alike.
 *
 * @param seed whole number
 * @param count pieces
 * @returns a question without a carton
 */
export function wrappedSet(seed: number, count: number): Omit<FitQuestion, "inside"> {
  const random = evenRandom(seed);
  const pieces: WrappedPiece[] = [];
  while (pieces.length < count) {
    const piece = wrappedPiece(random);
    const copies = random() < SEVERAL ? 2 + Math.floor(3 * random()) : 1;
    pieces.push(...Array.from({ length: Math.min(copies, count - pieces.length) }, () => piece));
  }
  const um = Math.round(drawn(CLEARANCES_IN, random) * MICROMETRES_PER_INCH);
  return { pieces, clearance: { wallsUm: um, baseUm: um, topUm: um } };
}

/**
 * Wrapped pieces and a carton that they would fill by 35 to 100 % of its room: some fit and some do not.
 *
 * @param seed whole number
 * @param count pieces
 * @returns the question
 */
export function wrappedQuestion(seed: number, count: number): FitQuestion {
  for (let attempt = 0; ; attempt++) {
    const set = wrappedSet(seed + attempt * FAR, count);
    const cartons = CARTON_SIZES_IN.map(cartonInside).filter((room) => {
      const fill = fillOf({ ...set, inside: room });
      return fill > LEAST_FILL && fill < 1;
    });
    const inside = cartons[Math.floor(evenRandom(seed)() * cartons.length)];
    if (inside) return { ...set, inside };
  }
}

/** So far apart that seeds of other questions are not met. */
const FAR = 1_000_000;

/**
 * A carton's inside.
 *
 * @param inches length, width, height
 * @returns micrometres
 */
export function cartonInside([length, width, height]: Sides): FitQuestion["inside"] {
  const um = (inches: number): number => Math.round(inches * MICROMETRES_PER_INCH);
  return sidesBlock([um(length), um(width), um(height)]);
}

function fillOf({ pieces, inside, clearance }: FitQuestion): number {
  const length = inside.lengthUm - 2 * clearance.wallsUm;
  const width = inside.widthUm - 2 * clearance.wallsUm;
  const height = inside.heightUm - clearance.baseUm - clearance.topUm;
  if (Math.min(length, width, height) <= 0) return Number.POSITIVE_INFINITY;
  const filled = pieces.reduce((sum, { block }) => sum + block.lengthUm * block.widthUm * block.heightUm, 0);
  return filled / (length * width * height);
}

function wrappedPiece(random: Random): WrappedPiece {
  const kind = drawn(KINDS, random);
  const wrapMm = drawn(WRAPS_MM, random);
  const scale = 1 + kind.spread * (2 * random() - 1);
  const um = (mm: number): number => Math.round((mm * scale + 2 * wrapMm) * MICROMETRES_PER_MILLIMETRE);
  const [length, width, height] = kind.sides;
  return { block: sidesBlock([um(length), um(width), um(height)]), upright: random() < kind.upright };
}

function drawn<T>(list: readonly T[], random: Random): T {
  const found = list[Math.floor(random() * list.length)];
  if (found === undefined) throw new RangeError("drawn requires at least one entry, got none");
  return found;
}
