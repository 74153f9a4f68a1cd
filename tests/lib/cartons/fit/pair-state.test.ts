import { describe, expect, it } from "vitest";
import { emptyState, openState, pairTable, turnPlace } from "#lib/cartons/fit/pair-state";

const problem = {
  room: [9, 9, 9] as const,
  pieces: [
    [[1, 2, 3] as const, [2, 1, 3] as const],
    [[4, 4, 4] as const],
    [[1, 2, 3] as const, [2, 1, 3] as const],
  ],
};

describe("a table of pairs", () => {
  it("names each pair once, and finds it from both sides", () => {
    const table = pairTable(problem);
    expect([...table.firstOf]).toEqual([0, 0, 1]);
    expect([...table.secondOf]).toEqual([1, 2, 2]);
    expect([...table.pairOf]).toEqual([-1, 0, 1, 0, -1, 2, 1, 2, -1]);
  });

  it("holds the sides of each turn, and which blocks are alike", () => {
    const table = pairTable(problem);
    expect([...table.sides.slice(turnPlace(0, 1), turnPlace(0, 1) + 3)]).toEqual([2, 1, 3]);
    expect([...table.sides.slice(turnPlace(1, 0), turnPlace(1, 0) + 3)]).toEqual([4, 4, 4]);
    expect([...table.alike]).toEqual([0, 1, 0]);
  });
});

describe("a state", () => {
  it("opens with every relation and every turn", () => {
    const state = openState(problem, pairTable(problem));
    expect([...state.relations]).toEqual([63, 63, 63]);
    expect([...state.turns]).toEqual([3, 1, 3]);
    expect([...state.before, ...state.behind, ...state.least].every((um) => um === 0)).toBe(true);
  });

  it("is copied as one list", () => {
    const table = pairTable(problem);
    const copy = emptyState(table);
    copy.all.set(openState(problem, table).all);
    expect([...copy.relations, ...copy.turns]).toEqual([63, 63, 63, 3, 1, 3]);
  });
});
