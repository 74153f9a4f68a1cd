import { bestPair } from "#lib/purchasing/plan/best-pair";
import { type OrderMoves, reschedule, slotPrice } from "#lib/purchasing/plan/board-schedule";
import type { PairSpace } from "#lib/purchasing/plan/pair-space";
import { pairStandIns } from "#lib/purchasing/plan/pair-stand-ins";
import {
  type BoardOrder,
  boardMinor,
  NOTHING,
  type PlanBoard,
  replace,
  replaceStandIns,
} from "#lib/purchasing/plan/plan-board";
import { type Draw, shuffled } from "#lib/purchasing/plan/steady-draw";

/** Weeks by which an order may move at once. */
const NEAR_WEEKS = 2;

/**
 * Places an order that is not placed, or closes one that is, and half the time opens another of the same supplier
 * nearby. The supplies of the order find new places.
 *
 * @param board is changed, for better or worse
 * @param order the order
 * @param draw numbers
 */
export function toggleOrder(board: PlanBoard, order: BoardOrder, draw: Draw): void {
  if (order.goods === 0) {
    for (const index of shuffled([...order.supplyIndexes], draw)) reschedule(board, index, { opened: order });
    for (const index of membersOf(board, order)) reschedule(board, index, {});
    return;
  }
  const near = board.orders.filter(
    ({ supplier, week, goods }) =>
      supplier === order.supplier && goods === 0 && Math.abs(week - order.week) <= NEAR_WEEKS,
  );
  const opened = near.length > 0 && draw(2) === 0 ? near[draw(near.length)] : undefined;
  const moves: OrderMoves = opened === undefined ? { closed: order } : { closed: order, opened };
  const members = shuffled(membersOf(board, order), draw);
  for (const index of members) reschedule(board, index, moves);
  for (const index of members) reschedule(board, index, { closed: order });
}

/** Places of the supplies that the order brings. */
function membersOf(board: PlanBoard, order: BoardOrder): number[] {
  return [...order.supplyIndexes].filter((index) =>
    [...(board.schedules[index]?.packs.keys() ?? [])].some((number) => board.orderOf[number] === order),
  );
}

/**
 * Takes a few supplies off the board and lets them find their places again, in another order.
 *
 * @param board is changed, for better or worse
 * @param among places of the supplies to choose from
 * @param draw numbers
 */
export function placeSomeAnew(board: PlanBoard, among: readonly number[], draw: Draw): void {
  const some = shuffled(among, draw).slice(0, FEWEST + draw(MORE));
  for (const index of some) replace(board, index, NOTHING);
  for (const index of some) reschedule(board, index, {});
  for (const index of shuffled(some, draw)) reschedule(board, index, {});
}

const FEWEST = 2;
const MORE = 5;

/**
 * Gives two supplies of which one stands in for the other new orders and new stand-ins, both at once.
 *
 * @param board is changed, for better or worse
 * @param space the pair
 * @param litreMinor by week: price of a litre right after arrivals
 * @param draw numbers
 */
export function placePairAnew(
  board: PlanBoard,
  space: PairSpace,
  litreMinor: Float64Array,
  draw: Draw,
): void {
  const { from, to } = space;
  const indexes = [from.of.index, to.of.index];
  for (const index of indexes) replace(board, index, NOTHING);
  const factor = draw(ROOM_STEPS) / 2;
  const prices = { slotMinor: slotPrice(board, {}), litreMinor: litreMinor.map((minor) => minor * factor) };
  const { packs } = bestPair(space, prices);
  const others = board.standIns.filter(({ toSupplyId }) => toSupplyId !== to.of.supply.id);
  replaceStandIns(board, indexes, [...others, ...pairStandIns(space, packs)]);
  for (const { of } of [from, to]) {
    const own = new Map([...packs].filter(([number]) => of.slots.some((slot) => slot.number === number)));
    replace(board, of.index, { packs: own, minor: 0 });
    // More than the board's sums hold: it is placed by itself below.
    if (boardMinor(board) === Number.POSITIVE_INFINITY) replace(board, of.index, NOTHING);
  }
  for (const index of shuffled(indexes, draw)) reschedule(board, index, {});
}

/** Room counts nothing to twice its price, in halves. */
const ROOM_STEPS = 5;
