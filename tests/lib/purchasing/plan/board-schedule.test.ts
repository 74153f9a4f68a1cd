import { describe, expect, it } from "vitest";
import { reschedule, slotPrice } from "#lib/purchasing/plan/board-schedule";
import { boardLines, planBoard } from "#lib/purchasing/plan/plan-board";
import { planParts } from "#lib/purchasing/plan/plan-model";
import { plainOffer, plainQuestion, plainSupplier, plainSupply } from "./small-question";

/** Two supplies, each used once in the second week; an order costs 60, nothing from goods of 200 on. */
const question = plainQuestion({
  supplies: [plainSupply("paper", [0, 1]), plainSupply("tape", [0, 1])].map((supply) => ({
    ...supply,
    shortMinor: 500,
    holdingMinor: 5,
  })),
  suppliers: [plainSupplier("north", 2, { deliveryMinor: 60, freeFromMinor: 200 })],
  offers: [plainOffer("paper", "north"), plainOffer("tape", "north")],
  limits: { cash: [{ throughWeek: 1, minor: 150 }], litres: null },
});

function boardOf(asked = question) {
  const { supplies, slots } = planParts(asked);
  return planBoard(asked, supplies, slots, []);
}

describe("scheduling a supply among the others", () => {
  it("joins the order that frees delivery, waits for the week of use, and keeps out of a closed order", () => {
    const board = boardOf({ ...question, limits: { cash: [], litres: null } });
    reschedule(board, 0, {});
    reschedule(board, 1, {});
    expect(boardLines(board)).toEqual([
      { offerId: "paper of north", week: 1, packs: 1 },
      { offerId: "tape of north", week: 1, packs: 1 },
    ]);
    const closed = board.orders.find(({ week }) => week === 1);
    if (closed === undefined) throw new RangeError("an order in week 1");
    reschedule(board, 1, { closed });
    expect(boardLines(board)[1]).toMatchObject({ offerId: "tape of north", week: 0 });
  });

  it("charges goods, delivery and the fine for cash that is not there", () => {
    const board = boardOf();
    const each = board.spaces[0]?.slots[1]?.[0];
    if (each === undefined) throw new RangeError("a slot");
    // 100 and delivery of 60; of 170 no more than the 150 there are: 20 fined three times.
    expect(slotPrice(board, {})(each, 100)).toBe(160);
    expect(slotPrice(board, {})(each, 170)).toBe(170 + 60 + 3 * 20);
    const order = board.orderOf[each.slot.number];
    if (order === undefined) throw new RangeError("an order");
    expect(slotPrice(board, { opened: order })(each, 100)).toBe(100);
    expect(slotPrice(board, { closed: order })(each, 100)).toBe(Number.POSITIVE_INFINITY);
  });
});
