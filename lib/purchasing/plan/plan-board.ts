import type { Schedule } from "#lib/purchasing/plan/best-schedule";
import { cashLimits } from "#lib/purchasing/plan/cash-limits";
import { deliveryOf } from "#lib/purchasing/plan/costed-plan";
import { type ModelSlot, type ModelSupply, orderColumn } from "#lib/purchasing/plan/model-columns";
import type { ChosenLine, ChosenStandIn } from "#lib/purchasing/plan/plan-choice";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { PlanSupplier } from "#lib/purchasing/plan/plan-supplier";
import { type ScheduleSpace, scheduleSpace } from "#lib/purchasing/plan/schedule-space";
import { sparedByWeek } from "#lib/purchasing/plan/stand-ins-first";

/** One possible order, and what is in it now. */
export type BoardOrder = {
  readonly supplier: PlanSupplier;
  readonly week: number;
  readonly supplyIndexes: ReadonlySet<number>;
  goods: number;
};

/** A plan that is being improved: what each supply orders, and what the orders and the room hold. */
export type PlanBoard = {
  readonly question: PlanQuestion;
  readonly spaces: ScheduleSpace[];
  readonly schedules: Schedule[];
  /** by supply: what its stock costs with its schedule, minor units */
  readonly stockMinor: Float64Array;
  /** by slot number */
  readonly orderOf: readonly BoardOrder[];
  readonly slots: readonly ModelSlot[];
  readonly orders: readonly BoardOrder[];
  /** litres right after arrivals, by week */
  readonly litres: Float64Array;
  /** what one minor unit below a least order costs */
  penalty: number;
  /** what one minor unit above a cash limit, or the worth of one litre above the room, costs */
  limitPenalty: number;
  /** by cash limit: a price on each minor unit spent under it; guides the search, is no part of the cost */
  readonly cashPrices: number[];
  /** by week: a price on each litre at home, likewise */
  readonly roomPrices: Float64Array;
  readonly litreMinor: number;
  /** what stands in for what */
  standIns: readonly ChosenStandIn[];
};

/**
 * A board on which nothing is ordered.
 *
 * @param question all of the plan
 * @param supplies supplies with their slots
 * @param slots all slots, by number
 * @param standIns what stands in for what
 * @returns the board
 */
export function planBoard(
  question: PlanQuestion,
  supplies: readonly ModelSupply[],
  slots: readonly ModelSlot[],
  standIns: readonly ChosenStandIn[],
): PlanBoard {
  const byName = new Map<string, BoardOrder & { supplyIndexes: Set<number> }>();
  const indexOf = new Map(supplies.map(({ supply, index }) => [supply.id, index]));
  const orderOf = slots.map((slot) => {
    const name = orderColumn(slot.supplierIndex, slot.week);
    const order = byName.get(name) ?? {
      supplier: slot.supplier,
      week: slot.week,
      supplyIndexes: new Set<number>(),
      goods: 0,
    };
    order.supplyIndexes.add(indexOf.get(slot.supply.id) ?? -1);
    byName.set(name, order);
    return order;
  });
  const spaces = supplies.map((of) => boardSpace(question, of, standIns));
  const litres = new Float64Array(question.weeks);
  for (const { of, after } of spaces) {
    after.forEach((units, week) => {
      litres[week] = (litres[week] ?? 0) + of.supply.litres * Math.max(0, units);
    });
  }
  const worth = slots.reduce((sum, { tiers }) => sum + (tiers[0]?.slopeMinor ?? 0), 0);
  const volume = slots.reduce((sum, { supply, offer }) => sum + supply.litres * offer.unitsPerPack, 0);
  return {
    question,
    spaces,
    schedules: spaces.map(() => NOTHING),
    stockMinor: Float64Array.from(spaces, (space) => stockMinor(space, slots, NOTHING)),
    orderOf,
    slots,
    orders: [...byName.values()],
    litres,
    penalty: 3,
    limitPenalty: 3,
    cashPrices: cashLimits(question).map(() => 0),
    roomPrices: new Float64Array(question.weeks),
    litreMinor: volume > 0 ? worth / volume : 1,
    standIns,
  };
}

const boardSpace = (question: PlanQuestion, of: ModelSupply, standIns: readonly ChosenStandIn[]) =>
  scheduleSpace(of, question.weeks, sparedByWeek(question, standIns, of.supply.id), "closed");

/**
 * Lets other stand-ins hold, and takes the orders of the supplies they concern off the board.
 *
 * @param board its stand-ins and the spaces of those supplies change
 * @param indexes the supplies
 * @param standIns all stand-ins from now on
 */
export function replaceStandIns(
  board: PlanBoard,
  indexes: readonly number[],
  standIns: readonly ChosenStandIn[],
): void {
  board.standIns = standIns;
  for (const index of indexes) {
    const of = board.spaces[index]?.of;
    if (of !== undefined) replaceSpace(board, index, boardSpace(board.question, of, standIns));
  }
}

/**
 * Gives a supply another space, with none of its orders.
 *
 * @param board space, orders and room change
 * @param index the supply
 * @param space of the same supply, for the stand-ins of the board
 */
export function replaceSpace(board: PlanBoard, index: number, space: ScheduleSpace): void {
  replace(board, index, NOTHING);
  const before = board.spaces[index]?.after;
  space.after.forEach((units, week) => {
    const more = Math.max(0, units) - Math.max(0, before?.[week] ?? 0);
    board.litres[week] = (board.litres[week] ?? 0) + space.of.supply.litres * more;
  });
  board.spaces[index] = space;
  put(board, index, NOTHING);
}

/** The schedule of a supply of which nothing is ordered. */
export const NOTHING: Schedule = { packs: new Map(), minor: 0 };

/** What an order of so many goods costs: delivery, handling, and a penalty while it is below the least order. */
export function orderMinor(board: PlanBoard, { supplier }: BoardOrder, goods: number): number {
  if (goods <= 0) return 0;
  const lack = Math.max(0, (supplier.leastOrderMinor ?? 0) - goods);
  const fine = lack > 0 ? board.penalty * lack + supplier.handlingMinor : 0;
  return goods + deliveryOf(supplier, goods) + supplier.handlingMinor + fine;
}

/** Goods and delivery of all orders through a week, minor units. */
export function spentThrough(board: PlanBoard, week: number): number {
  let sum = 0;
  for (const order of board.orders) {
    if (order.week <= week && order.goods > 0) sum += order.goods + deliveryOf(order.supplier, order.goods);
  }
  return sum;
}

/**
 * Gives a supply other orders.
 *
 * @param board orders, room and stock costs change with it
 * @param index the supply
 * @param schedule its orders from now on
 */
export function replace(board: PlanBoard, index: number, schedule: Schedule): void {
  takeOff(board, index);
  put(board, index, schedule);
}

/**
 * Puts orders of a supply on the board that has none of it.
 *
 * @param board orders, room and stock costs change with it
 * @param index the supply, its orders taken off
 * @param schedule its orders from now on
 */
export function put(board: PlanBoard, index: number, schedule: Schedule): void {
  place(board, index, schedule, 1);
  board.schedules[index] = schedule;
  const space = board.spaces[index];
  if (space !== undefined) board.stockMinor[index] = stockMinor(space, board.slots, schedule);
}

/** Takes what a supply orders now off the board. */
export function takeOff(board: PlanBoard, index: number): void {
  place(board, index, board.schedules[index] ?? NOTHING, -1);
}

function place(board: PlanBoard, index: number, schedule: Schedule, sign: 1 | -1): void {
  const space = board.spaces[index];
  if (space === undefined) return;
  const inflow = new Float64Array(board.question.weeks);
  for (const [number, packs] of schedule.packs) {
    const slot = board.slots[number];
    const order = board.orderOf[number];
    if (slot === undefined || order === undefined) continue;
    const goods = goodsOf(space, slot, packs);
    order.goods += sign * goods;
    if (order.goods < 1e-6) order.goods = 0;
    inflow[slot.arrival] = (inflow[slot.arrival] ?? 0) + packs * slot.offer.unitsPerPack;
  }
  let level = 0;
  for (let week = 0; week < board.question.weeks; week++) {
    level += inflow[week] ?? 0;
    const bare = space.after[week] ?? 0;
    const more = Math.max(0, bare + level) - Math.max(0, bare);
    board.litres[week] = (board.litres[week] ?? 0) + sign * space.of.supply.litres * more;
  }
}

function goodsOf(space: ScheduleSpace, slot: ModelSlot, packs: number): number {
  const found = space.slots[slot.arrival]?.find((each) => each.slot.number === slot.number);
  return found?.goods[packs / found.bundle] ?? 0;
}

/**
 * What the board costs as it stands, broken limits fined.
 *
 * @param board orders and schedules
 * @returns minor units
 */
export function boardMinor(board: PlanBoard): number {
  let sum = 0;
  for (const order of board.orders) sum += orderMinor(board, order, order.goods);
  for (const minor of board.stockMinor) sum += minor;
  for (const { throughWeek, minor } of cashLimits(board.question)) {
    sum += board.limitPenalty * Math.max(0, spentThrough(board, throughWeek) - minor);
  }
  const room = board.question.limits.litres;
  if (room === null) return sum;
  for (const litres of board.litres)
    sum += board.limitPenalty * board.litreMinor * Math.max(0, litres - room);
  return sum;
}

/**
 * The orders on a board as lines of a plan.
 *
 * @param board orders and schedules
 * @returns packs by offer and week
 */
export function boardLines({ schedules, slots }: PlanBoard): ChosenLine[] {
  return schedules.flatMap(({ packs }) =>
    [...packs].flatMap(([number, count]) => {
      const slot = slots[number];
      return slot === undefined ? [] : [{ offerId: slot.offer.id, week: slot.week, packs: count }];
    }),
  );
}

function stockMinor(space: ScheduleSpace, slots: readonly ModelSlot[], schedule: Schedule): number {
  let at = 0;
  let sum = 0;
  const arriving = [...schedule.packs];
  for (let week = 0; week < space.costs.length; week++) {
    for (const [number, packs] of arriving) {
      const found =
        slots[number]?.arrival === week && space.slots[week]?.find((each) => each.slot.number === number);
      if (found) for (let pack = 0; pack < packs; pack += found.bundle) at = found.next[at] ?? -1;
    }
    // Sums that the space does not hold.
    sum += space.costs[week]?.[at] ?? Number.POSITIVE_INFINITY;
  }
  return sum;
}
