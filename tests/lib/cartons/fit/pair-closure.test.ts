import { describe, expect, it } from "vitest";
import type { FitProblem } from "#lib/cartons/fit/fit-problem";
import { closed } from "#lib/cartons/fit/pair-closure";
import { openState, pairTable } from "#lib/cartons/fit/pair-state";

function opened(problem: FitProblem) {
  const table = pairTable(problem);
  return { table, state: openState(problem, table) };
}

const FIRST_BEFORE_ALONG = 0b000001;
const EITHER_ORDER_UP = 0b100100;

describe("conclusions", () => {
  it("strike out the relations that find no room, and take the shortest sides", () => {
    const { table, state } = opened({ room: [5, 5, 6], pieces: [[[3, 3, 3]], [[3, 3, 3]]] });
    expect(closed(table, state)).toBe(true);
    expect([...state.relations]).toEqual([EITHER_ORDER_UP]);
    expect([...state.least]).toEqual([3, 3, 3, 3, 3, 3]);
  });

  it("strike out the turns that find no room", () => {
    const { table, state } = opened({
      room: [5, 5, 2],
      pieces: [
        [
          [2, 2, 4],
          [2, 4, 2],
          [4, 2, 2],
        ],
      ],
    });
    expect(closed(table, state)).toBe(true);
    expect([...state.turns]).toEqual([0b110]);
    expect([...state.least]).toEqual([2, 2, 2]);
  });

  it("push blocks apart along a row, and draw what follows for turns", () => {
    const { table, state } = opened({
      room: [9, 4, 4],
      pieces: [
        [[4, 4, 4]],
        [
          [2, 3, 3],
          [3, 2, 3],
          [3, 3, 2],
        ],
        [[3, 3, 3]],
      ],
    });
    // The first before the second before the third.
    state.relations.set([FIRST_BEFORE_ALONG, FIRST_BEFORE_ALONG, FIRST_BEFORE_ALONG]);
    expect(closed(table, state)).toBe(true);
    expect([...state.turns]).toEqual([1, 0b001, 1]);
    expect([0, 3, 6].map((place) => state.before[place])).toEqual([0, 4, 6]);
    expect([0, 3, 6].map((place) => state.behind[place])).toEqual([5, 3, 0]);
  });

  it("end where a pair, a turn or a row is left without a way", () => {
    const pair = opened({ room: [5, 5, 5], pieces: [[[3, 3, 3]], [[3, 3, 3]]] });
    expect(closed(pair.table, pair.state)).toBe(false);
    const turn = opened({ room: [5, 5, 5], pieces: [[[6, 1, 1]]] });
    expect(closed(turn.table, turn.state)).toBe(false);
    const row = opened({ room: [8, 9, 9], pieces: [[[3, 1, 1]], [[3, 1, 1]], [[3, 1, 1]]] });
    row.state.relations.set([FIRST_BEFORE_ALONG, FIRST_BEFORE_ALONG, FIRST_BEFORE_ALONG]);
    expect(closed(row.table, row.state)).toBe(false);
  });

  it("end where blocks would lie one before the other in a circle", () => {
    const { table, state } = opened({ room: [99, 9, 9], pieces: [[[1, 1, 1]], [[1, 1, 1]], [[1, 1, 1]]] });
    // The first before the second before the third before the first.
    state.relations.set([0b000001, 0b001000, 0b000001]);
    expect(closed(table, state)).toBe(false);
  });
});
