import { type OrderMoves, reschedule } from "#lib/purchasing/plan/board-schedule";
import { cashLimits } from "#lib/purchasing/plan/cash-limits";
import { costedPlan } from "#lib/purchasing/plan/costed-plan";
import type { ModelSlot, ModelSupply } from "#lib/purchasing/plan/model-columns";
import {
  type BoardOrder,
  boardLines,
  boardMinor,
  type PlanBoard,
  planBoard,
  replace,
  spentThrough,
} from "#lib/purchasing/plan/plan-board";
import type { ChosenStandIn, PlanChoice } from "#lib/purchasing/plan/plan-choice";
import { planFaults } from "#lib/purchasing/plan/plan-faults";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import { isCheaper, standInsFirst } from "#lib/purchasing/plan/stand-ins-first";

/** How often all orders are tried for closing and opening; each turn takes some hundred milliseconds. */
const MOST_TURNS = 6;

/**
 * A good plan without a solver, in three steps:
 * 1. supply by supply, the cheapest orders while the others' stay, until nothing changes: a line joins an order
 *    that is placed anyway, fills up to the least order or to free delivery where that saves, takes the price
 *    step that pays;
 * 2. order by order: is it cheaper without it, with one more, or a week sooner or later?
 * 3. limits that are still broken are fined more and more, and orders that break them are given up.
 *
 * @param question all of the plan
 * @param supplies supplies with their slots
 * @param slots all slots, by number
 * @param isOver whether no more orders shall be tried
 * @returns packs by offer and week; saved material stands in before anything is bought
 */
export function heuristicChoice(
  question: PlanQuestion,
  supplies: readonly ModelSupply[],
  slots: readonly ModelSlot[],
  isOver: () => boolean,
): PlanChoice {
  const cheap = question.substitutes.filter((pair) => isCheaper(pair, supplies));
  for (const pairs of cheap.length > 0 ? [cheap, []] : [[]]) {
    const choice = improved(question, supplies, slots, standInsFirst(question, supplies, pairs), isOver);
    if (planFaults(question, costedPlan(question, choice)).length === 0) return choice;
  }
  // Ordering nothing keeps every limit that can be kept.
  return { lines: [], standIns: [] };
}

function improved(
  question: PlanQuestion,
  supplies: readonly ModelSupply[],
  slots: readonly ModelSlot[],
  standIns: readonly ChosenStandIn[],
  isOver: () => boolean,
): PlanChoice {
  const board = planBoard(question, supplies, slots, standIns);
  priceLimits(board, isOver);
  for (let turn = 0; turn < MOST_TURNS; turn++) {
    const before = boardMinor(board);
    for (const order of board.orders) if (!isOver()) tryOrder(board, order);
    if (isOver() || boardMinor(board) > before - 0.5) break;
  }
  board.cashPrices.fill(0);
  board.roomPrices.fill(0);
  keepLimits(board, isOver);
  return { lines: boardLines(board), standIns };
}

const PRICE_TURNS = 16;

/**
 * Finds prices for cash and room at which the supplies, each for itself, together keep the limits: what is over
 * raises the price, what is left lowers it. The cheapest board on the way, fines counted, is kept.
 */
function priceLimits(board: PlanBoard, isOver: () => boolean): void {
  const { limitPenalty } = board;
  settle(board, isOver);
  let best = { minor: boardMinor(board), schedules: [...board.schedules] };
  const isLimited = board.cashPrices.length > 0 || board.question.limits.litres !== null;
  for (let turn = 0; isLimited && turn < PRICE_TURNS && !isOver(); turn++) {
    const step = 0.5 / (1 + turn / 4);
    cashLimits(board.question).forEach((limit, number) => {
      const over = (spentThrough(board, limit.throughWeek) - limit.minor) / Math.max(1, limit.minor);
      board.cashPrices[number] = Math.max(0, (board.cashPrices[number] ?? 0) + step * over);
    });
    const room = board.question.limits.litres ?? Number.POSITIVE_INFINITY;
    board.litres.forEach((litres, week) => {
      const over = room === Number.POSITIVE_INFINITY ? 0 : (litres - room) / Math.max(1, room);
      const price = (board.roomPrices[week] ?? 0) + step * ROOM_STEP * board.litreMinor * over;
      board.roomPrices[week] = Math.max(0, price);
    });
    board.limitPenalty = 0;
    for (let index = 0; index < board.spaces.length; index++) reschedule(board, index, {});
    board.limitPenalty = limitPenalty;
    const minor = boardMinor(board);
    if (minor < best.minor) best = { minor, schedules: [...board.schedules] };
  }
  best.schedules.forEach((schedule, index) => {
    replace(board, index, schedule);
  });
}

/** A litre is taken for several weeks, so its price by the week is a part of its worth. */
const ROOM_STEP = 0.3;

const MOST_SWEEPS = 8;

/** Ends after the first sweep where the time is over. */
function settle(board: PlanBoard, isOver: () => boolean): void {
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep++) {
    const before = boardMinor(board);
    for (let index = 0; index < board.spaces.length; index++) reschedule(board, index, {});
    if (isOver() || (sweep > 0 && boardMinor(board) > before - 0.5)) return;
  }
}

/** Closes or opens one order, lets its supplies find new places, and keeps what is cheaper. */
function tryOrder(board: PlanBoard, order: BoardOrder): void {
  const users = [...order.supplyIndexes];
  if (order.goods > 0) {
    attempt(board, users, { closed: order });
    if (order.goods === 0) return;
    for (const other of board.orders) {
      const isNext = other.supplier === order.supplier && Math.abs(other.week - order.week) <= 2;
      if (isNext && other.goods === 0) attempt(board, users, { closed: order, opened: other });
      if (order.goods === 0) return;
    }
  } else {
    attempt(board, users, { opened: order });
  }
}

function attempt(board: PlanBoard, users: readonly number[], moves: OrderMoves): void {
  const before = boardMinor(board);
  const kept = users.map((index) => [index, board.schedules[index]] as const);
  for (const index of users) reschedule(board, index, moves);
  const still = moves.closed === undefined ? {} : { closed: moves.closed };
  for (const index of users) reschedule(board, index, still);
  if (boardMinor(board) < before - 0.5) return;
  for (const [index, schedule] of kept) if (schedule !== undefined) replace(board, index, schedule);
}

/** Fines what is broken ever more; an order that stays below its least is given up. */
function keepLimits(board: PlanBoard, isOver: () => boolean): void {
  for (let turn = 0; turn < 4; turn++) {
    board.penalty *= 10;
    board.limitPenalty *= 10;
    settle(board, isOver);
  }
  for (const order of board.orders) {
    if (order.goods === 0 || order.goods >= (order.supplier.leastOrderMinor ?? 0)) continue;
    for (const index of order.supplyIndexes) reschedule(board, index, { closed: order });
  }
}
