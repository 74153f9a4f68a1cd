import { describe, expect, it } from "vitest";
import { reschedule } from "#lib/purchasing/plan/board-schedule";
import { costedPlan } from "#lib/purchasing/plan/costed-plan";
import {
  boardMinor,
  NOTHING,
  orderMinor,
  planBoard,
  replace,
  spentThrough,
} from "#lib/purchasing/plan/plan-board";
import { planParts } from "#lib/purchasing/plan/plan-model";
import { smallQuestion } from "./small-question";

function boardOf(seed: number) {
  const question = smallQuestion(seed);
  const { supplies, slots } = planParts(question);
  return { question, slots, board: planBoard(question, supplies, slots, []) };
}

describe("a board", () => {
  it("costs what the plan on it costs, while no limit is broken", () => {
    let compared = 0;
    for (let seed = 1; seed <= 60; seed++) {
      const { question, slots, board } = boardOf(seed);
      for (const index of board.spaces.keys()) reschedule(board, index, {});
      const lines = board.schedules.flatMap(({ packs }) =>
        [...packs].map(([number, count]) => ({
          offerId: slots[number]?.offer.id ?? "",
          week: slots[number]?.week ?? -1,
          packs: count,
        })),
      );
      const plan = costedPlan(question, { lines, standIns: [] });
      for (const { throughWeek } of question.limits.cash) {
        const spent = plan.orders.filter(({ week }) => week <= throughWeek);
        const minor = spent.reduce((sum, order) => sum + order.goodsMinor + order.deliveryMinor, 0);
        expect(spentThrough(board, throughWeek)).toBeCloseTo(minor, 6);
      }
      board.penalty = 0;
      board.limitPenalty = 0;
      const isTaken = board.orders.every(
        ({ goods, supplier }) => goods === 0 || goods >= (supplier.leastOrderMinor ?? 0),
      );
      if (!isTaken) continue;
      expect(boardMinor(board)).toBeCloseTo(plan.costs.totalMinor, 6);
      compared++;
    }
    expect(compared).toBeGreaterThan(20);
  });

  it("takes off what it put on", () => {
    const { board } = boardOf(2);
    const bare = [...board.litres];
    for (const index of board.spaces.keys()) reschedule(board, index, {});
    expect(board.orders.some(({ goods }) => goods > 0)).toBe(true);
    for (const index of board.spaces.keys()) replace(board, index, NOTHING);
    expect(board.orders.every(({ goods }) => goods === 0)).toBe(true);
    board.litres.forEach((litres, week) => {
      expect(litres).toBeCloseTo(bare[week] ?? Number.NaN, 9);
    });
  });

  it("fines an order below the least, and keeps supplies out of a closed one", () => {
    const { board } = boardOf(2);
    const [order] = board.orders;
    if (order === undefined) throw new RangeError("an order");
    const strict = { ...order, supplier: { ...order.supplier, leastOrderMinor: 1000, handlingMinor: 5 } };
    expect(orderMinor(board, strict, 0)).toBe(0);
    expect(orderMinor(board, strict, 900)).toBeGreaterThan(orderMinor(board, strict, 1000));
    for (const index of order.supplyIndexes) reschedule(board, index, { closed: order });
    expect(order.goods).toBe(0);
  });
});
