import { entry } from "#lib/cartons/fit/entry";
import type { PairState, PairTable } from "#lib/cartons/fit/pair-state";

/** A relation of a pair, or a turn of a block, that is tried: one bit. */
export type PairChoice =
  | { readonly kind: "relation"; readonly pair: number; readonly bit: number }
  | { readonly kind: "turn"; readonly block: number; readonly bit: number };

/**
 * Strikes out a choice that led nowhere, with all that lead nowhere for the same reason. Where a state stays the same when
 * two blocks change places, or when an axis is mirrored, its packings do too; so a choice has a packing only if its image
 * has one.
 *
 * @param table - the problem
 * @param state - the state in which the choice was tried; the choice and its images are struck out
 * @param choice - what was tried in vain
 */
export function strikeWithImages(table: PairTable, state: PairState, choice: PairChoice): void {
  if (choice.kind === "turn") {
    for (const block of placeholdersOf(table, state, choice.block)) {
      state.turns[block] = entry(state.turns, block) & ~choice.bit;
    }
    return;
  }
  const { bit, pair } = choice;
  const front = bit < 8 ? entry(table.firstOf, pair) : entry(table.secondOf, pair);
  const back = bit < 8 ? entry(table.secondOf, pair) : entry(table.firstOf, pair);
  const axis = (31 - Math.clz32(bit)) % 3;
  const isMirrored = looksTheSameMirrored(table, state, axis);
  const backs = placeholdersOf(table, state, back);
  // Read before anything is struck out: the images are those of the state as it was tried.
  for (const one of placeholdersOf(table, state, front)) {
    for (const other of backs) {
      if (one === other) continue;
      strike(table, state, one, other, axis);
      if (isMirrored) strike(table, state, other, one, axis);
    }
  }
}

function strike(
  { blocks, pairOf }: PairTable,
  { relations }: PairState,
  front: number,
  back: number,
  axis: number,
): void {
  const pair = entry(pairOf, front * blocks + back);
  relations[pair] = entry(relations, pair) & ~((front < back ? 1 : 8) << axis);
}

/** The blocks that could change places with this one, itself among them. */
function placeholdersOf(table: PairTable, state: PairState, block: number): number[] {
  const found = [block];
  for (let other = 0; other < table.blocks; other++) {
    if (other !== block && areInterchangeable(table, state, block, other)) found.push(other);
  }
  return found;
}

function areInterchangeable(table: PairTable, state: PairState, one: number, other: number): boolean {
  if (entry(table.alike, one) !== entry(table.alike, other)) return false;
  if (entry(state.turns, one) !== entry(state.turns, other)) return false;
  const own = relationFrom(table, state, one, other);
  if (own !== reversed(own)) return false;
  for (let third = 0; third < table.blocks; third++) {
    if (third === one || third === other) continue;
    if (relationFrom(table, state, one, third) !== relationFrom(table, state, other, third)) return false;
  }
  return true;
}

/** The open relations of two blocks, the one given first as the first. */
function relationFrom(
  { blocks, pairOf }: PairTable,
  { relations }: PairState,
  one: number,
  other: number,
): number {
  const open = entry(relations, entry(pairOf, one * blocks + other));
  return one < other ? open : reversed(open);
}

const reversed = (relations: number): number => ((relations & 0b111) << 3) | (relations >> 3);

function looksTheSameMirrored({ pairs }: PairTable, { relations }: PairState, axis: number): boolean {
  for (let pair = 0; pair < pairs; pair++) {
    const open = entry(relations, pair) >> axis;
    if ((open & 1) !== ((open >> 3) & 1)) return false;
  }
  return true;
}
