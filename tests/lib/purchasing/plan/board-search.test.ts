import { describe, expect, it } from "vitest";
import { reschedule } from "#lib/purchasing/plan/board-schedule";
import { searchBoard } from "#lib/purchasing/plan/board-search";
import { boardMinor, planBoard } from "#lib/purchasing/plan/plan-board";
import { planParts } from "#lib/purchasing/plan/plan-model";
import { everyPlan } from "./every-plan";
import { smallQuestion } from "./small-question";

/** So many turns, as if each took the same time. */
function turns(count: number): () => number {
  let turn = 0;
  return () => turn++ / count;
}

function settled(seed: number) {
  const question = smallQuestion(seed);
  const { supplies, slots } = planParts(question);
  const board = planBoard(question, supplies, slots, []);
  board.penalty = 30;
  board.limitPenalty = 30;
  for (const index of board.spaces.keys()) reschedule(board, index, {});
  return { question, board };
}

const plain = { pairs: [], litreMinor: new Float64Array(3), enoughMinor: Number.NEGATIVE_INFINITY };

describe("a search of the board", () => {
  it("never ends dearer than it began, and mostly at the best of every plan", () => {
    let met = 0;
    let compared = 0;
    for (let seed = 1; seed <= 40; seed++) {
      const { question, board } = settled(seed);
      if (question.substitutes.length > 0) continue;
      const before = boardMinor(board);
      searchBoard(board, { ...plain, gone: turns(200) });
      const minor = boardMinor(board);
      expect(minor).toBeLessThanOrEqual(before + 1e-6);
      const least = everyPlan(question);
      if (least === null) continue;
      compared++;
      if (minor <= least.cost + 1e-6) met++;
    }
    expect(compared).toBeGreaterThan(15);
    expect(met / compared).toBeGreaterThan(0.8);
  });

  it("gives the same board each time, and ends where that is enough", () => {
    const minors = [1, 2].map(() => {
      const { board } = settled(4);
      searchBoard(board, { ...plain, gone: turns(50) });
      return boardMinor(board);
    });
    expect(minors[0]).toBe(minors[1]);
    let asked = 0;
    const { board } = settled(4);
    searchBoard(board, { ...plain, enoughMinor: Number.POSITIVE_INFINITY, gone: () => asked++ });
    expect(asked).toBe(1);
  });
});
