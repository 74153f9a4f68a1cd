import { bestSchedule, type Schedule } from "#lib/purchasing/plan/best-schedule";
import { cashLimits } from "#lib/purchasing/plan/cash-limits";
import { deliveryOf } from "#lib/purchasing/plan/costed-plan";
import { type ModelSlot, type ModelSupply, orderColumn } from "#lib/purchasing/plan/model-columns";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { PlanSupplier } from "#lib/purchasing/plan/plan-supplier";
import { type ScheduleSpace, scheduleSpace } from "#lib/purchasing/plan/schedule-space";

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
  readonly spaces: readonly ScheduleSpace[];
  readonly schedules: Schedule[];
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
};

/**
 * A board on which nothing is ordered.
 *
 * @param question all of the plan
 * @param supplies supplies with their slots
 * @param slots all slots, by number
 * @param spared by supply: use units that stand-ins spare in each week
 * @returns the board
 */
export function planBoard(
  question: PlanQuestion,
  supplies: readonly ModelSupply[],
  slots: readonly ModelSlot[],
  spared: readonly (readonly number[])[],
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
  const spaces = supplies.map((of) => scheduleSpace(of, question.weeks, spared[of.index] ?? []));
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
    schedules: spaces.map(() => ({ packs: new Map(), minor: 0 })),
    orderOf,
    slots,
    orders: [...byName.values()],
    litres,
    penalty: 3,
    limitPenalty: 3,
    cashPrices: cashLimits(question).map(() => 0),
    roomPrices: new Float64Array(question.weeks),
    litreMinor: volume > 0 ? worth / volume : 1,
  };
}

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

/** Takes a supply's orders off the board, or (sign 1) puts them on. */
export function place(board: PlanBoard, index: number, schedule: Schedule, sign: 1 | -1): void {
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
 * Schedules one supply anew, cheapest among what the others order now; orders in `closed` take nothing, those
 * in `opened` ask nothing for being placed.
 *
 * @param board its supply's orders change
 * @param index the supply
 * @param moves orders that are closed or opened for a trial
 */
export function reschedule(
  board: PlanBoard,
  index: number,
  moves: { readonly closed?: BoardOrder; readonly opened?: BoardOrder },
): void {
  const space = board.spaces[index];
  const before = board.schedules[index];
  if (space === undefined || before === undefined) return;
  place(board, index, before, -1);
  const cash = cashLimits(board.question).map((limit, number) => ({
    ...limit,
    price: board.cashPrices[number] ?? 0,
    left: limit.minor - spentThrough(board, limit.throughWeek),
  }));
  const room = board.question.limits.litres;
  const { litres } = space.of.supply;
  const schedule = bestSchedule(space, {
    slotMinor: ({ slot }, goods) => {
      const order = board.orderOf[slot.number];
      if (order === undefined || order === moves.closed) return Number.POSITIVE_INFINITY;
      const now =
        order === moves.opened
          ? goods
          : orderMinor(board, order, order.goods + goods) - orderMinor(board, order, order.goods);
      let fine = 0;
      for (const { throughWeek, left, price } of cash) {
        if (order.week > throughWeek) continue;
        fine += Math.max(0, goods - Math.max(0, left)) * board.limitPenalty + price * goods;
      }
      return now + fine;
    },
    roomMinor: (week, after) => {
      if (room === null || litres === 0) return 0;
      const bare = Math.max(0, space.after[week] ?? 0);
      const over = (board.litres[week] ?? 0) + litres * (Math.max(0, after) - bare) - room;
      const priced = (board.roomPrices[week] ?? 0) * litres * Math.max(0, after);
      return over > 0 ? over * board.litreMinor * board.limitPenalty + priced : priced;
    },
  });
  board.schedules[index] = schedule;
  place(board, index, schedule, 1);
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
  board.spaces.forEach((space, index) => {
    sum += stockMinor(space, board.slots, board.schedules[index]);
  });
  for (const { throughWeek, minor } of cashLimits(board.question)) {
    sum += board.limitPenalty * Math.max(0, spentThrough(board, throughWeek) - minor);
  }
  const room = board.question.limits.litres;
  if (room === null) return sum;
  for (const litres of board.litres)
    sum += board.limitPenalty * board.litreMinor * Math.max(0, litres - room);
  return sum;
}

function stockMinor(
  space: ScheduleSpace,
  slots: readonly ModelSlot[],
  schedule: Schedule | undefined,
): number {
  let at = 0;
  let sum = 0;
  const arriving = [...(schedule?.packs ?? [])];
  for (let week = 0; week < space.costs.length; week++) {
    for (const [number, packs] of arriving) {
      const found =
        slots[number]?.arrival === week && space.slots[week]?.find((each) => each.slot.number === number);
      if (found) for (let pack = 0; pack < packs; pack += found.bundle) at = found.next[at] ?? at;
    }
    sum += space.costs[week]?.[at] ?? 0;
  }
  return sum;
}
