import type { FitProblem } from "#lib/cartons/fit/fit-problem";
import { AXES } from "#lib/cartons/fit/sides";

/** What stays the same while a problem is searched; blocks, pairs and turns by their places from 0. */
export type PairTable = {
  readonly blocks: number;
  readonly pairs: number;
  /** by pair: its first and its second block */
  readonly firstOf: Int32Array;
  readonly secondOf: Int32Array;
  /** by two blocks: their pair, -1 for a block and itself */
  readonly pairOf: Int32Array;
  /** by block: the first block with the same turns */
  readonly alike: Int32Array;
  /** by axis, micrometres */
  readonly room: Int32Array;
  /** by block, six turns and three axes: sides in micrometres */
  readonly sides: Int32Array;
};

/**
 * What is still open. Two blocks of a packing are apart on some axis, one before the other, so each pair has six possible
 * relations: bit `axis` says the first before the second, bit `axis + 3` the second before the first. Each block has
 * its turns, one bit each. The rest follows from these.
 */
export type PairState = {
  /** the lists below in one, to be copied at once */
  readonly all: Int32Array;
  /** by pair: open relations */
  readonly relations: Int32Array;
  /** by block: open turns */
  readonly turns: Int32Array;
  /** by block and axis: how much must lie before the block, micrometres */
  readonly before: Int32Array;
  /** by block and axis: how much must lie behind the block */
  readonly behind: Int32Array;
  /** by block and axis: the shortest side among the open turns */
  readonly least: Int32Array;
};

const MOST_TURNS = 6;
const ALL_RELATIONS = 0b111111;

/**
 * Where the sides of a turn stand in a table.
 *
 * @param block - from 0
 * @param turn - from 0
 * @returns the place of the side along the first axis
 */
export const turnPlace = (block: number, turn: number): number => 3 * (MOST_TURNS * block + turn);

/**
 * The table of a problem.
 *
 * @param problem - room above zero and blocks, micrometres
 * @returns the table
 */
export function pairTable({ room, pieces }: FitProblem): PairTable {
  const pairs = pieces.flatMap((_, first) =>
    pieces.slice(first + 1).map((_other, at) => [first, first + 1 + at]),
  );
  const sides = new Int32Array(turnPlace(pieces.length, 0));
  pieces.forEach((turns, block) => {
    turns.forEach((turn, at) => {
      sides.set(turn, turnPlace(block, at));
    });
  });
  const pairOf = new Int32Array(pieces.length ** 2).fill(-1);
  pairs.forEach(([first = 0, second = 0], pair) => {
    pairOf[first * pieces.length + second] = pair;
    pairOf[second * pieces.length + first] = pair;
  });
  const shapes = pieces.map((turns) => turns.join(";"));
  return {
    blocks: pieces.length,
    pairs: pairs.length,
    pairOf,
    alike: Int32Array.from(shapes, (shape) => shapes.indexOf(shape)),
    firstOf: Int32Array.from(pairs, ([first = 0]) => first),
    secondOf: Int32Array.from(pairs, ([, second = 0]) => second),
    room: Int32Array.from(room),
    sides,
  };
}

/**
 * A state with all lists empty, for a table.
 *
 * @param table - the problem's table
 * @returns zeros
 */
export function emptyState({ blocks, pairs }: PairTable): PairState {
  const all = new Int32Array(pairs + blocks * (1 + 3 * AXES.length));
  const part = (from: number, size: number): Int32Array => all.subarray(from, from + size);
  const sided = blocks * AXES.length;
  return {
    all,
    relations: part(0, pairs),
    turns: part(pairs, blocks),
    before: part(pairs + blocks, sided),
    behind: part(pairs + blocks + sided, sided),
    least: part(pairs + blocks + 2 * sided, sided),
  };
}

/**
 * The state at the start of a search: every relation and every turn open.
 *
 * @param problem - room and blocks
 * @param table - its table
 * @returns the state, nothing concluded yet
 */
export function openState({ pieces }: FitProblem, table: PairTable): PairState {
  const state = emptyState(table);
  state.relations.fill(ALL_RELATIONS);
  state.turns.set(pieces.map((turns) => 2 ** turns.length - 1));
  return state;
}
