import { entry } from "#lib/cartons/fit/entry";
import { type PairState, type PairTable, turnPlace } from "#lib/cartons/fit/pair-state";

/**
 * Draws all conclusions: turns and relations that no longer find room are struck out, a pair's last relation pushes its
 * blocks apart, until nothing changes. Nothing that a packing needs is ever struck out: `before`, `least` and `behind` are
 * least amounts.
 *
 * @param table - the problem
 * @param state - changed to what is left
 * @returns whether every pair still has a relation and every block a turn
 */
export function closed(table: PairTable, state: PairState): boolean {
  for (;;) {
    const turns = closedTurns(table, state);
    const relations = turns === "stuck" ? turns : closedRelations(table, state);
    if (relations === "stuck") return false;
    if (turns === "still" && relations === "still") return true;
  }
}

/** What a look at all blocks or pairs came to: one has no way left, something moved, or nothing. */
type Look = "stuck" | "moved" | "still";

function closedTurns(table: PairTable, state: PairState): Look {
  let look: Look = "still";
  for (let block = 0; block < table.blocks; block++) {
    const open = openTurns(table, state, block);
    if (open === 0) return "stuck";
    state.turns[block] = open;
    if (lengthenLeast(table, state, block)) look = "moved";
  }
  return look;
}

function closedRelations(table: PairTable, state: PairState): Look {
  let look: Look = "still";
  for (let pair = 0; pair < table.pairs; pair++) {
    const open = openRelations(table, state, pair);
    if (open === 0) return "stuck";
    state.relations[pair] = open;
    const isSettled = (open & (open - 1)) === 0;
    if (isSettled && pushApart(table, state, pair, open)) look = "moved";
  }
  return look;
}

/** The turns of a block that find room between what must lie before and behind it. */
function openTurns({ room, sides }: PairTable, { turns, before, behind }: PairState, block: number): number {
  const place = 3 * block;
  const room0 = entry(room, 0) - entry(before, place) - entry(behind, place);
  const room1 = entry(room, 1) - entry(before, place + 1) - entry(behind, place + 1);
  const room2 = entry(room, 2) - entry(before, place + 2) - entry(behind, place + 2);
  let open = entry(turns, block);
  for (let left = open; left > 0; left &= left - 1) {
    const turn = 31 - Math.clz32(left & -left);
    const at = turnPlace(block, turn);
    if (entry(sides, at) > room0 || entry(sides, at + 1) > room1 || entry(sides, at + 2) > room2) {
      open &= ~(1 << turn);
    }
  }
  return open;
}

/** Takes the shortest sides of the open turns; whether one grew. */
function lengthenLeast({ sides }: PairTable, { turns, least }: PairState, block: number): boolean {
  let hasGrown = false;
  for (let axis = 0; axis < 3; axis++) {
    let shortest = Number.MAX_SAFE_INTEGER;
    for (let left = entry(turns, block); left > 0; left &= left - 1) {
      const side = entry(sides, turnPlace(block, 31 - Math.clz32(left & -left)) + axis);
      if (side < shortest) shortest = side;
    }
    if (shortest > entry(least, 3 * block + axis)) {
      least[3 * block + axis] = shortest;
      hasGrown = true;
    }
  }
  return hasGrown;
}

/** The relations of a pair that find room for both blocks one behind the other. */
function openRelations(
  table: PairTable,
  { relations, before, behind, least }: PairState,
  pair: number,
): number {
  const first = 3 * entry(table.firstOf, pair);
  const second = 3 * entry(table.secondOf, pair);
  let open = entry(relations, pair);
  for (let axis = 0; axis < 3; axis++) {
    if ((open & (0b1001 << axis)) === 0) continue;
    const a = first + axis;
    const b = second + axis;
    const room = entry(table.room, axis) - entry(least, a) - entry(least, b);
    if (entry(before, a) + entry(behind, b) > room) open &= ~(1 << axis);
    if (entry(before, b) + entry(behind, a) > room) open &= ~(0b1000 << axis);
  }
  return open;
}

function pushApart(
  table: PairTable,
  { before, behind, least }: PairState,
  pair: number,
  relation: number,
): boolean {
  const first = entry(table.firstOf, pair);
  const second = entry(table.secondOf, pair);
  const bit = 31 - Math.clz32(relation);
  const axis = bit % 3;
  const front = 3 * (bit < 3 ? first : second) + axis;
  const back = 3 * (bit < 3 ? second : first) + axis;
  const reach = entry(before, front) + entry(least, front);
  const rest = entry(behind, back) + entry(least, back);
  const isMoved = reach > entry(before, back) || rest > entry(behind, front);
  if (reach > entry(before, back)) before[back] = reach;
  if (rest > entry(behind, front)) behind[front] = rest;
  return isMoved;
}
