import type { FitQuestion, WrappedPiece } from "#lib/cartons/fit/fit-question";
import type { Placement } from "#lib/cartons/fit/placement";
import { AXES, type Axis, blockSides, type Sides, sidesBlock } from "#lib/cartons/fit/sides";

/** A block turned, with its corner nearest the origin of the room. */
export type PlacedSides = { readonly sides: Sides; readonly at: Sides };

/** A fit question without what does not matter: clearance taken off, axes and pieces in a standing order. */
export type FitProblem = {
  /** what the clearance leaves, micrometres; below zero where it leaves nothing */
  readonly room: Sides;
  /** for each piece its distinct allowed turns, largest piece first */
  readonly pieces: readonly (readonly Sides[])[];
};

/** The problem of a question, and the way back. */
export type ReducedQuestion = {
  readonly problem: FitProblem;
  /** for each piece of the problem its place in the question, from 0 */
  readonly pieceOf: readonly number[];
  /** turns a placement in the room of the problem back into one of the question */
  readonly placement: (placed: readonly PlacedSides[]) => Placement;
};

/**
 * Reduces a question to its problem. Questions that differ only in the order of their pieces, in how a piece that may
 * turn was measured, or in which of the carton's sides was called its length give the same problem, and so the same
 * answer. Where no piece is upright, the height is a side like the others.
 *
 * @param question - pieces, carton and clearance
 * @returns the problem, and how to go back
 * @throws RangeError if there is no piece, a side is no whole number above zero or a clearance none from zero
 * @example fitProblem(question).problem.room // [100000, 200000, 300000]
 */
export function fitProblem(question: FitQuestion): ReducedQuestion {
  refuseFaults(question);
  const { inside, clearance } = question;
  const room: Sides = [
    inside.lengthUm - 2 * clearance.wallsUm,
    inside.widthUm - 2 * clearance.wallsUm,
    inside.heightUm - clearance.baseUm - clearance.topUm,
  ];
  const axes = standingAxes(room, question.pieces.some(isFixed));
  const sorted = question.pieces
    .map((piece, index) => ({ index, isFixed: isFixed(piece), sides: standingSides(piece) }))
    .toSorted((a, b) => largerFirst(a.sides, b.sides) || Number(b.isFixed) - Number(a.isFixed));
  const pieceOf = sorted.map(({ index }) => index);
  return {
    problem: {
      room: alongAxes(room, axes),
      pieces: sorted.map((piece) => distinctTurns(piece.sides, piece.isFixed)),
    },
    pieceOf,
    placement: (placed) =>
      question.pieces.map((_, index) => {
        const found = placed[pieceOf.indexOf(index)];
        if (found === undefined) {
          throw new RangeError(`fitProblem requires a place for every piece, got none for piece ${index}`);
        }
        const [alongUm, acrossUm, upUm] = alongAxes(found.at, backTo(axes));
        return {
          turned: sidesBlock(alongAxes(found.sides, backTo(axes))),
          alongUm: alongUm + clearance.wallsUm,
          acrossUm: acrossUm + clearance.wallsUm,
          upUm: upUm + clearance.baseUm,
        };
      }),
  };
}

type Order = readonly [Axis, Axis, Axis];

/** All ways to lay the three sides along the axes; the first two leave the height upright. */
const TURNS: readonly Order[] = [
  [0, 1, 2],
  [1, 0, 2],
  [0, 2, 1],
  [2, 0, 1],
  [1, 2, 0],
  [2, 1, 0],
];
const UPRIGHT_TURNS = 2;

function refuseFaults({ pieces, inside, clearance }: FitQuestion): void {
  const lengths = [...pieces.map(({ block }) => block), inside].flatMap(blockSides);
  const wrong = lengths.find((um) => !(Number.isSafeInteger(um) && um > 0 && um <= LONGEST_UM));
  if (wrong !== undefined) {
    throw new RangeError(`fitProblem requires sides of whole micrometres up to ${LONGEST_UM}, got ${wrong}`);
  }
  const free = [clearance.wallsUm, clearance.baseUm, clearance.topUm];
  const wrongFree = free.find((um) => !(Number.isSafeInteger(um) && um >= 0 && um <= LONGEST_UM));
  if (wrongFree !== undefined) {
    throw new RangeError(`fitProblem requires clearances of whole micrometres from zero, got ${wrongFree}`);
  }
  if (pieces.length === 0) throw new RangeError("fitProblem requires at least one piece, got none");
}

/** A hundred metres: sums of a few sides stay inside 32 bits. */
const LONGEST_UM = 100_000_000;

/** Whether a piece really may not tip: a cube on its side is the same cube. */
function isFixed({ block, upright }: WrappedPiece): boolean {
  return upright && !(block.lengthUm === block.widthUm && block.widthUm === block.heightUm);
}

function standingSides(piece: WrappedPiece): Sides {
  const [length, width, height] = blockSides(piece.block);
  if (isFixed(piece)) return [Math.min(length, width), Math.max(length, width), height];
  const low = Math.min(length, width, height);
  const high = Math.max(length, width, height);
  return [low, length + width + height - low - high, high];
}

function largerFirst(a: Sides, b: Sides): number {
  return b[0] * b[1] * b[2] - a[0] * a[1] * a[2] || b[2] - a[2] || b[1] - a[1] || b[0] - a[0];
}

/** The axes of the room in the order of their sides; the third stays where something stands upright. */
function standingAxes(room: Sides, isStanding: boolean): Order {
  if (isStanding) return room[0] <= room[1] ? [0, 1, 2] : [1, 0, 2];
  const [first = 0, second = 1, third = 2] = AXES.toSorted((a, b) => room[a] - room[b]);
  return [first, second, third];
}

const alongAxes = (sides: Sides, [first, second, third]: Order): Sides => [
  sides[first],
  sides[second],
  sides[third],
];

function backTo(axes: Order): Order {
  const place = (axis: Axis): Axis => AXES.find((at) => axes[at] === axis) ?? axis;
  return [place(0), place(1), place(2)];
}

function distinctTurns(sides: Sides, isUpright: boolean): Sides[] {
  const turns = isUpright ? TURNS.slice(0, UPRIGHT_TURNS) : TURNS;
  return [
    ...new Map(turns.map((turn) => alongAxes(sides, turn)).map((turned) => [turned.join(), turned])).values(),
  ];
}
