import { bestPair } from "#lib/purchasing/plan/best-pair";
import { bestSchedule } from "#lib/purchasing/plan/best-schedule";
import { cashLimits } from "#lib/purchasing/plan/cash-limits";
import type { PairSpace } from "#lib/purchasing/plan/pair-space";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { ScheduleSpace, SpaceSlot } from "#lib/purchasing/plan/schedule-space";
import type { SharedOrder } from "#lib/purchasing/plan/shared-orders";
import type { SharedPrices } from "#lib/purchasing/plan/shared-prices";

/** What is shared, and what each supply or pair could order by itself. */
export type SharedParts = {
  readonly question: PlanQuestion;
  readonly orders: readonly SharedOrder[];
  /** by slot: place of its order */
  readonly orderOf: Int32Array;
  readonly singles: readonly ScheduleSpace[];
  readonly pairs: readonly SharedPair[];
};

/** A pair, and the orders found for it so far. */
export type SharedPair = { readonly space: PairSpace; readonly found: PairOrders[] };

/** Orders of a pair with what they cost in stock; slots with their goods. */
type PairOrders = {
  readonly packs: ReadonlyMap<number, number>;
  readonly lines: readonly (readonly [each: SpaceSlot, goods: number])[];
  readonly litres: Float64Array;
  readonly stockMinor: number;
};

/** The least cost at some prices, and by how much each shared thing is overdrawn there: a direction of ascent. */
type SharedCost = { readonly minor: number; readonly over: SharedPrices };

/**
 * What all must cost at least, when each supply pays the prices for its part of orders, cash and room, and the
 * orders are placed where the parts pay for them. At no such prices is it more than the cheapest plan costs.
 *
 * @param parts what is shared among what
 * @param prices any prices of at least 0; for litres 0 where room is no matter
 * @param isExact false to look for a pair's orders among those found before only: quick, but then no bound
 * @returns minor units, and where more is taken than there is
 * @source Lagrangian relaxation of the rows that join the supplies: Geoffrion (1974), from memory
 */
export function sharedCost(parts: SharedParts, prices: SharedPrices, isExact: boolean): SharedCost {
  const { question, orders, orderOf } = parts;
  const cashByOrder = cashPriceByOrder(orders, prices);
  const slotMinor = sharedSlotMinor(parts, prices);
  const over = emptyLike(prices);
  const ordered = new Float64Array(orders.length);
  const litres = new Float64Array(question.weeks);
  let minor = 0;
  const take = (packs: ReadonlyMap<number, number>, slots: ReadonlyMap<number, SpaceSlot>): void => {
    for (const [number, count] of packs) {
      over.part[number] = 1;
      const each = slots.get(number);
      const place = orderOf[number] ?? 0;
      ordered[place] = (ordered[place] ?? 0) + (each?.goods[count / each.bundle] ?? 0);
    }
  };
  for (const space of parts.singles) {
    const own = space.of.supply.litres;
    const roomMinor = (week: number, after: number) => (prices.litre[week] ?? 0) * own * Math.max(0, after);
    const found = bestSchedule(space, { slotMinor, roomMinor });
    minor += found.minor;
    const slots = slotsOf(space);
    take(found.packs, slots);
    if (own > 0) addLitres(litres, space, found.packs, slots);
  }
  for (const pair of parts.pairs) {
    const cost = pairMinor(slotMinor, prices.litre);
    if (isExact || pair.found.length === 0) pair.found.push(newOrders(pair.space, slotMinor, prices));
    const cheapest = pair.found.reduce((best, each) => (cost(each) < cost(best) ? each : best));
    minor += cost(cheapest);
    take(cheapest.packs, new Map(cheapest.lines.map(([each]) => [each.slot.number, each])));
    cheapest.litres.forEach((each, week) => {
      litres[week] = (litres[week] ?? 0) + each;
    });
  }
  const spent = new Float64Array(prices.cash.length);
  orders.forEach((order, place) => {
    minor += placed(
      { order, place, goods: ordered[place] ?? 0 },
      cashByOrder[place] ?? 0,
      prices,
      over,
      spent,
    );
  });
  cashLimits(question).forEach((limit, place) => {
    minor -= (prices.cash[place] ?? 0) * limit.minor;
    over.cash[place] = (spent[place] ?? 0) - limit.minor;
  });
  const room = question.limits.litres;
  if (room !== null) {
    litres.forEach((each, week) => {
      minor -= (prices.litre[week] ?? 0) * room;
      over.litre[week] = each - room;
    });
  }
  return { minor, over };
}

const cashPriceByOrder = (orders: readonly SharedOrder[], { cash }: SharedPrices): number[] =>
  orders.map((order) => order.cash.reduce((sum, place) => sum + (cash[place] ?? 0), 0));

/**
 * What goods of a slot cost at some prices: themselves, cash, less what they are worth for free delivery and the
 * least order, and the slot's part of its order.
 *
 * @param parts what is shared among what
 * @param prices prices of at least 0
 * @returns minor units of a slot with so many minor units of goods
 */
export function sharedSlotMinor(
  { orders, orderOf }: SharedParts,
  prices: SharedPrices,
): (each: SpaceSlot, goods: number) => number {
  const factor = cashPriceByOrder(orders, prices).map(
    (cash, place) => 1 + cash - (prices.free[place] ?? 0) - (prices.least[place] ?? 0),
  );
  return ({ slot }, goods) =>
    goods * (factor[orderOf[slot.number] ?? 0] ?? 1) + (prices.part[slot.number] ?? 0);
}

const pairMinor =
  (slotMinor: (each: SpaceSlot, goods: number) => number, litre: Float64Array) =>
  ({ lines, litres, stockMinor }: PairOrders): number =>
    litres.reduce(
      (sum, each, week) => sum + each * (litre[week] ?? 0),
      lines.reduce((sum, [each, goods]) => sum + slotMinor(each, goods), stockMinor),
    );

function newOrders(
  space: PairSpace,
  slotMinor: (each: SpaceSlot, goods: number) => number,
  prices: SharedPrices,
): PairOrders {
  const { packs, litres, minor } = bestPair(space, { slotMinor, litreMinor: prices.litre });
  const slots = [...space.from.slots.flat(), ...space.to.slots.flat()];
  const lines = slots.flatMap((each) => {
    const count = packs.get(each.slot.number) ?? 0;
    return count === 0 ? [] : [[each, each.goods[count / each.bundle] ?? 0] as const];
  });
  const bare = { packs, lines, litres, stockMinor: 0 };
  return { ...bare, stockMinor: minor - pairMinor(slotMinor, prices.litre)(bare) };
}

type OrderPlace = { readonly order: SharedOrder; readonly place: number; readonly goods: number };

/** Places an order where its parts pay for it, for nothing where that is cheaper; gives what it costs beyond them. */
function placed(
  { order, place, goods }: OrderPlace,
  cash: number,
  prices: SharedPrices,
  over: SharedPrices,
  spent: Float64Array,
): number {
  const { supplier, slots, freeFrom } = order;
  const { paid, free } = orderCosts(order, place, cash, prices);
  const isPlaced = Math.min(paid, free) < 0;
  const isFree = isPlaced && free < paid;
  const least = supplier.leastOrderMinor;
  for (const { number } of slots) over.part[number] = (over.part[number] ?? 0) - Number(isPlaced);
  if (freeFrom !== null) over.free[place] = (isFree ? freeFrom : 0) - goods;
  if (least !== null) over.least[place] = (isPlaced ? least : 0) - goods;
  const charged = isPlaced && !isFree ? supplier.deliveryMinor : 0;
  for (const limit of order.cash) spent[limit] = (spent[limit] ?? 0) + goods + charged;
  return isPlaced ? Math.min(paid, free) : 0;
}

/** What a placed order costs beyond what its slots pay for it, with delivery paid and with delivery free. */
function orderCosts(
  { supplier, slots, freeFrom }: SharedOrder,
  place: number,
  cash: number,
  prices: SharedPrices,
): { readonly paid: number; readonly free: number } {
  const parts = slots.reduce((sum, { number }) => sum + (prices.part[number] ?? 0), 0);
  const least = (prices.least[place] ?? 0) * (supplier.leastOrderMinor ?? 0);
  const bare = supplier.handlingMinor + least - parts;
  const free = freeFrom === null ? Number.POSITIVE_INFINITY : bare + (prices.free[place] ?? 0) * freeFrom;
  return { paid: bare + supplier.deliveryMinor * (1 + cash), free };
}

const slotsOf = ({ slots }: ScheduleSpace): Map<number, SpaceSlot> =>
  new Map(slots.flat().map((each) => [each.slot.number, each]));

function addLitres(
  litres: Float64Array,
  space: ScheduleSpace,
  packs: ReadonlyMap<number, number>,
  slots: ReadonlyMap<number, SpaceSlot>,
): void {
  const inflow = new Float64Array(litres.length);
  for (const [number, count] of packs) {
    const slot = slots.get(number)?.slot;
    if (slot !== undefined)
      inflow[slot.arrival] = (inflow[slot.arrival] ?? 0) + count * slot.offer.unitsPerPack;
  }
  let level = 0;
  for (let week = 0; week < litres.length; week++) {
    level += inflow[week] ?? 0;
    const there = Math.max(0, (space.after[week] ?? 0) + level);
    litres[week] = (litres[week] ?? 0) + space.of.supply.litres * there;
  }
}

function emptyLike(prices: SharedPrices): SharedPrices {
  return {
    part: new Float64Array(prices.part.length),
    free: new Float64Array(prices.free.length),
    least: new Float64Array(prices.least.length),
    cash: new Float64Array(prices.cash.length),
    litre: new Float64Array(prices.litre.length),
  };
}
