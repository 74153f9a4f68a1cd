import { bestSchedule } from "#lib/purchasing/plan/best-schedule";
import { cashLimits } from "#lib/purchasing/plan/cash-limits";
import {
  type BoardOrder,
  orderMinor,
  type PlanBoard,
  put,
  spentThrough,
  takeOff,
} from "#lib/purchasing/plan/plan-board";
import type { SpaceSlot } from "#lib/purchasing/plan/schedule-space";

/** Orders that take nothing, or ask nothing for being placed, while a move is tried. */
export type OrderMoves = { readonly closed?: BoardOrder; readonly opened?: BoardOrder };

/**
 * What goods of a slot cost beyond what their order costs without them, fines for cash included.
 *
 * @param board as the others' orders stand
 * @param moves orders that are closed or opened for a trial
 * @returns minor units of a slot with so many minor units of goods
 */
export function slotPrice(board: PlanBoard, moves: OrderMoves): (each: SpaceSlot, goods: number) => number {
  const cash = cashLimits(board.question).map((limit, number) => ({
    ...limit,
    price: board.cashPrices[number] ?? 0,
    left: limit.minor - spentThrough(board, limit.throughWeek),
  }));
  let last: { readonly number: number; readonly bareMinor: number } = { number: -1, bareMinor: 0 };
  return ({ slot }, goods) => {
    const order = board.orderOf[slot.number];
    if (order === undefined || order === moves.closed) return Number.POSITIVE_INFINITY;
    // A slot is asked for one number of packs after the other.
    if (slot.number !== last.number)
      last = { number: slot.number, bareMinor: orderMinor(board, order, order.goods) };
    const now =
      order === moves.opened ? goods : orderMinor(board, order, order.goods + goods) - last.bareMinor;
    let fine = 0;
    for (const { throughWeek, left, price } of cash) {
      if (order.week > throughWeek) continue;
      fine += Math.max(0, goods - Math.max(0, left)) * board.limitPenalty + price * goods;
    }
    return now + fine;
  };
}

/**
 * Schedules one supply anew, cheapest among what the others order now; orders in `closed` take nothing, those
 * in `opened` ask nothing for being placed.
 *
 * @param board its supply's orders change
 * @param index the supply
 * @param moves orders that are closed or opened for a trial
 */
export function reschedule(board: PlanBoard, index: number, moves: OrderMoves): void {
  const space = board.spaces[index];
  if (space === undefined) return;
  takeOff(board, index);
  const room = board.question.limits.litres;
  const { litres } = space.of.supply;
  const schedule = bestSchedule(space, {
    slotMinor: slotPrice(board, moves),
    roomMinor: (week, after) => {
      if (room === null || litres === 0) return 0;
      const bare = Math.max(0, space.after[week] ?? 0);
      const over = (board.litres[week] ?? 0) + litres * (Math.max(0, after) - bare) - room;
      const priced = (board.roomPrices[week] ?? 0) * litres * Math.max(0, after);
      return over > 0 ? over * board.litreMinor * board.limitPenalty + priced : priced;
    },
  });
  put(board, index, schedule);
}
