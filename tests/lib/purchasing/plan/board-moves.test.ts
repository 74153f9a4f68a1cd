import { describe, expect, it } from "vitest";
import { placePairAnew, placeSomeAnew, toggleOrder } from "#lib/purchasing/plan/board-moves";
import { reschedule } from "#lib/purchasing/plan/board-schedule";
import { costedPlan } from "#lib/purchasing/plan/costed-plan";
import type { ModelSupply } from "#lib/purchasing/plan/model-columns";
import { type PairSpace, pairSpace } from "#lib/purchasing/plan/pair-space";
import { boardLines, boardMinor, type PlanBoard, planBoard } from "#lib/purchasing/plan/plan-board";
import { planParts } from "#lib/purchasing/plan/plan-model";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import { steadyDraw } from "#lib/purchasing/plan/steady-draw";
import { plainOffer, plainQuestion, plainSupplier, plainSupply, smallQuestion } from "./small-question";

/** Orders, stock and stand-ins of a board, costed from its lines alone. */
function costOf(question: PlanQuestion, board: PlanBoard): number {
  return costedPlan(question, { lines: boardLines(board), standIns: board.standIns }).costs.totalMinor;
}

function withoutFines(question: PlanQuestion): PlanQuestion {
  const suppliers = question.suppliers.map((each) => ({ ...each, leastOrderMinor: null }));
  return { ...question, suppliers, limits: { cash: [], litres: null } };
}

function pairOf(question: PlanQuestion, supplies: readonly ModelSupply[]): PairSpace[] {
  return question.substitutes.flatMap(({ fromSupplyId, toSupplyId, ratio }) => {
    const from = supplies.find(({ supply }) => supply.id === fromSupplyId);
    const to = supplies.find(({ supply }) => supply.id === toSupplyId);
    return from === undefined || to === undefined ? [] : [pairSpace(from, to, ratio, question.weeks, 4)];
  });
}

describe("moves on a board", () => {
  it("keep the board's cost equal to that of its lines and stand-ins", () => {
    let compared = 0;
    for (let seed = 1; seed <= 30; seed++) {
      const question = withoutFines(smallQuestion(seed));
      const { supplies, slots } = planParts(question);
      const board = planBoard(question, supplies, slots, []);
      const draw = steadyDraw();
      const pairs = pairOf(question, supplies);
      for (const order of board.orders) {
        toggleOrder(board, order, draw);
        placeSomeAnew(board, [...board.spaces.keys()], draw);
        for (const pair of pairs) placePairAnew(board, pair, new Float64Array(question.weeks), draw);
        const minor = boardMinor(board);
        // Stand-ins out of what is not there: such a board is never kept.
        if (minor === Number.POSITIVE_INFINITY) continue;
        compared++;
        expect(minor, `question ${seed}`).toBeCloseTo(costOf(question, board), 6);
      }
    }
    expect(compared).toBeGreaterThan(80);
  });

  it("close an order that is placed, and open one that serves", () => {
    const question = plainQuestion({
      supplies: [plainSupply("paper", [1, 1], { shortMinor: 500, holdingMinor: 10 })],
      suppliers: [plainSupplier("north", 2, { handlingMinor: 30 })],
      offers: [plainOffer("paper", "north")],
    });
    const { supplies, slots } = planParts(question);
    const board = planBoard(question, supplies, slots, []);
    reschedule(board, 0, {});
    const [first, second] = board.orders;
    if (first === undefined || second === undefined) throw new RangeError("two orders");
    // Holding one for a week costs 10, a second order 30.
    expect([first.goods, second.goods]).toEqual([200, 0]);
    toggleOrder(board, first, steadyDraw());
    expect([first.goods, second.goods]).toEqual([0, 200]);
  });

  it("let saved material do the work of a pair", () => {
    const question = plainQuestion({
      supplies: [plainSupply("paper", [2, 2]), plainSupply("saved", [0, 0], { stock: 4 })],
      suppliers: [plainSupplier("north", 2)],
      offers: [plainOffer("paper", "north")],
      substitutes: [{ fromSupplyId: "saved", toSupplyId: "paper", ratio: 1 }],
    });
    const { supplies, slots } = planParts(question);
    const board = planBoard(question, supplies, slots, []);
    const [to, from] = supplies;
    if (from === undefined || to === undefined) throw new RangeError("two supplies");
    reschedule(board, 0, {});
    expect(boardLines(board)).not.toEqual([]);
    placePairAnew(board, pairSpace(from, to, 1, 2, 6), new Float64Array(2), steadyDraw());
    expect(boardLines(board)).toEqual([]);
    expect(board.standIns.reduce((sum, { units }) => sum + units, 0)).toBeCloseTo(4, 6);
  });
});
