import { entry } from "#lib/cartons/fit/entry";
import type { FitProblem, PlacedSides } from "#lib/cartons/fit/fit-problem";
import { closed } from "#lib/cartons/fit/pair-closure";
import {
  emptyState,
  openState,
  type PairState,
  type PairTable,
  pairTable,
  turnPlace,
} from "#lib/cartons/fit/pair-state";
import { type PairChoice, strikeWithImages } from "#lib/cartons/fit/pair-symmetry";
import type { Sides } from "#lib/cartons/fit/sides";

/** What a search came to, and how many states it looked at. */
export type PairSearchEnd =
  | { readonly kind: "found"; readonly placed: readonly PlacedSides[]; readonly steps: number }
  | { readonly kind: "none"; readonly steps: number }
  | { readonly kind: "budget-ended"; readonly steps: number };

export type SearchFirst = "pairs" | "turns";

/**
 * Searches all packings of blocks in a room, by which block lies before which. In a packing each pair is apart on some
 * axis in some order. With an order for each pair and a turn for each block, there is a packing exactly where on each axis
 * no row of blocks is longer than the room: the least corners that the rows leave are one. So when every choice is struck
 * out, there is none.
 *
 * What has the fewest ways left comes first. With pairs first, blocks count with their shortest sides until all pairs are
 * settled: that proves soonest that nothing fits. With turns where they have no more ways than a pair, full rooms are found
 * sooner.
 *
 * @param problem - room above zero and blocks, micrometres
 * @param budget - states to look at, at most
 * @param first - whether pairs or turns come first
 * @returns a place for each block; that there is none; or that the budget ended before
 * @see Martello, Pisinger, Vigo, den Boef & Korst (2007), Algorithm 864: relations of pairs for general packings; Fekete &
 *   Schepers (2004); both from memory, lazy turns and images our own
 * @example pairSearch({ room: [11, 11, 11], pieces: [[[6, 6, 6]], [[6, 6, 6]]] }, 100, "pairs").kind // "none"
 */
export function pairSearch(problem: FitProblem, budget: number, first: SearchFirst): PairSearchEnd {
  const table = pairTable(problem);
  const states = [openState(problem, table)];
  const stateAt = (depth: number): PairState => {
    const state = states[depth] ?? emptyState(table);
    states[depth] = state;
    return state;
  };
  let steps = 0;
  const visit = (depth: number): PairState | "none" | "budget-ended" => {
    const state = stateAt(depth);
    for (;;) {
      if (steps === budget) return "budget-ended";
      steps++;
      if (!closed(table, state)) return "none";
      const choice = nextChoice(state, first);
      if (choice === null) return state;
      tryChoice(state, stateAt(depth + 1), choice);
      const end = visit(depth + 1);
      if (end !== "none") return end;
      strikeWithImages(table, state, choice);
    }
  };
  const end = visit(0);
  if (end === "none" || end === "budget-ended") return { kind: end, steps };
  return { kind: "found", placed: placesOf(table, end), steps };
}

function tryChoice(state: PairState, next: PairState, choice: PairChoice): void {
  next.all.set(state.all);
  if (choice.kind === "turn") next.turns[choice.block] = choice.bit;
  else next.relations[choice.pair] = choice.bit;
}

/** The choice to try next; null where nothing is open any more. */
function nextChoice({ relations, turns }: PairState, first: SearchFirst): PairChoice | null {
  const pair = fewestOpen(relations);
  const block = fewestOpen(turns);
  if (
    block !== null &&
    (pair === null ||
      (first === "turns" && bitCount(entry(turns, block)) <= bitCount(entry(relations, pair))))
  ) {
    return { kind: "turn", block, bit: lowestBit(entry(turns, block)) };
  }
  return pair === null ? null : { kind: "relation", pair, bit: lowestBit(entry(relations, pair)) };
}

/** Where the fewest ways, but more than one, are open; the first such place. */
function fewestOpen(masks: Int32Array): number | null {
  let fewest = Number.POSITIVE_INFINITY;
  let found: number | null = null;
  for (let place = 0; place < masks.length; place++) {
    const ways = bitCount(entry(masks, place));
    if (ways > 1 && ways < fewest) {
      fewest = ways;
      found = place;
    }
  }
  return found;
}

const lowestBit = (mask: number): number => mask & -mask;

function bitCount(mask: number): number {
  let count = 0;
  for (let left = mask; left > 0; left &= left - 1) count++;
  return count;
}

function placesOf({ blocks, sides }: PairTable, { turns, before }: PairState): PlacedSides[] {
  const three = (list: Int32Array, place: number): Sides => [
    entry(list, place),
    entry(list, place + 1),
    entry(list, place + 2),
  ];
  return Array.from({ length: blocks }, (_, block) => ({
    sides: three(sides, turnPlace(block, 31 - Math.clz32(entry(turns, block)))),
    at: three(before, 3 * block),
  }));
}
