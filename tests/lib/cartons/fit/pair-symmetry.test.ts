import { describe, expect, it } from "vitest";
import { openState, pairTable } from "#lib/cartons/fit/pair-state";
import { strikeWithImages } from "#lib/cartons/fit/pair-symmetry";
import type { Sides } from "#lib/cartons/fit/sides";

const CUBE: readonly Sides[] = [[2, 2, 2]];
const FLAT: readonly Sides[] = [
  [3, 3, 1],
  [3, 1, 3],
];

function opened(...pieces: (readonly Sides[])[]) {
  const problem = { room: [9, 9, 9] as const, pieces };
  const table = pairTable(problem);
  return { table, state: openState(problem, table) };
}

describe("a choice that led nowhere", () => {
  it("is struck out with its mirror image while nothing has an order on that axis", () => {
    const { table, state } = opened(CUBE, FLAT);
    strikeWithImages(table, state, { kind: "relation", pair: 0, bit: 0b000010 });
    expect([...state.relations]).toEqual([0b101101]);
  });

  it("is struck out alone once some pair has an order on that axis", () => {
    const { table, state } = opened(CUBE, FLAT, [[1, 1, 1]]);
    state.relations[2] = 0b000010;
    strikeWithImages(table, state, { kind: "relation", pair: 0, bit: 0b000010 });
    expect([...state.relations]).toEqual([0b111101, 0b111111, 0b000010]);
  });

  it("is struck out for each of two blocks that could change places", () => {
    const { table, state } = opened(FLAT, CUBE, CUBE);
    state.relations.set([0b000111, 0b000111]);
    strikeWithImages(table, state, { kind: "relation", pair: 0, bit: 0b000001 });
    expect([...state.relations]).toEqual([0b000110, 0b000110, 0b111111]);
  });

  it("is struck out in both orders for the two themselves", () => {
    const { table, state } = opened(FLAT, CUBE, CUBE);
    state.relations.set([0b000111, 0b000111]);
    strikeWithImages(table, state, { kind: "relation", pair: 2, bit: 0b100000 });
    expect([...state.relations]).toEqual([0b000111, 0b000111, 0b011011]);
  });

  it("stays with one of two like blocks that stand differently to a third", () => {
    const { table, state } = opened(FLAT, CUBE, CUBE);
    state.relations.set([0b000111, 0b000011]);
    strikeWithImages(table, state, { kind: "relation", pair: 0, bit: 0b000001 });
    expect([...state.relations]).toEqual([0b000110, 0b000011, 0b111111]);
  });

  it("is a turn for all blocks that could change places", () => {
    const { table, state } = opened(FLAT, FLAT, CUBE);
    strikeWithImages(table, state, { kind: "turn", block: 1, bit: 0b01 });
    expect([...state.turns]).toEqual([0b10, 0b10, 1]);
    const apart = opened(FLAT, FLAT, CUBE);
    apart.state.relations[0] = 0b000001;
    strikeWithImages(apart.table, apart.state, { kind: "turn", block: 1, bit: 0b01 });
    expect([...apart.state.turns]).toEqual([0b11, 0b10, 1]);
  });
});
