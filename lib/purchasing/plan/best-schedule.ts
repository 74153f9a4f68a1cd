import { openWorth, type ScheduleSpace, type SpaceSlot } from "#lib/purchasing/plan/schedule-space";

/** What is known of the other supplies while one is scheduled. */
export type SchedulePrices = {
  /** what so many packs of a slot cost beyond what the order costs without them; `goods` is their price */
  readonly slotMinor: (slot: SpaceSlot, goods: number) => number;
  /** what stock right after arrivals costs beyond holding, such as room that is not there */
  readonly roomMinor: (week: number, after: number) => number;
};

/** Packs by slot number, for slots with any. */
export type Schedule = { readonly packs: ReadonlyMap<number, number>; readonly minor: number };

/**
 * The cheapest orders of one supply while all else stays: dynamic programming over weeks and over what has been
 * ordered so far, exact for whole packs and any price steps.
 *
 * @param space the supply's levels and costs
 * @param prices what packs cost among the other supplies' orders
 * @returns packs by slot and the cost with stock, minor units
 * @source Wagner & Whitin (1958) in the form with stock as the state, from memory
 */
export function bestSchedule(space: ScheduleSpace, prices: SchedulePrices): Schedule {
  const { levels, slots, costs } = space;
  let cost = new Float64Array(levels.length).fill(Number.POSITIVE_INFINITY);
  let before = new Float64Array(levels.length);
  cost[0] = 0;
  const steps: Step[] = [];
  for (let week = 0; week < costs.length; week++) {
    for (const each of slots[week] ?? []) {
      const price = pricesOf(each, prices);
      if (price === null) continue;
      [before, cost] = [cost, before];
      steps.push({ each, back: orderStep(space, each, price, before, cost) });
    }
    addStock(space, prices, week, cost);
  }
  let best = 0;
  for (let level = 1; level < cost.length; level++) if ((cost[level] ?? 0) < (cost[best] ?? 0)) best = level;
  return { packs: packsBack(steps, best), minor: cost[best] ?? Number.POSITIVE_INFINITY };
}

/** One slot's choice: for each level the level before in the upper half of the number, bundles in the lower. */
type Step = { readonly each: SpaceSlot; readonly back: Float64Array };

/** No slot has as many bundles. */
const HALF = 2 ** 32;

/** What 0, 1, 2 .. bundles cost; null where the slot takes nothing. */
function pricesOf(each: SpaceSlot, { slotMinor }: SchedulePrices): Float64Array | null {
  let isOpen = false;
  const price = new Float64Array(each.goods.length);
  for (let count = 1; count < price.length; count++) {
    const goods = each.goods[count] ?? Number.POSITIVE_INFINITY;
    const minor = goods === Number.POSITIVE_INFINITY ? goods : slotMinor(each, goods);
    price[count] = minor;
    if (minor < Number.POSITIVE_INFINITY) isOpen = true;
  }
  return isOpen ? price : null;
}

/** Fills `cost` with the least to come to each level with the slot or without it, and gives the way back. */
function orderStep(
  space: ScheduleSpace,
  { next, bundle, slot }: SpaceSlot,
  price: Float64Array,
  before: Float64Array,
  cost: Float64Array,
): Float64Array {
  const units = bundle * slot.offer.unitsPerPack;
  const back = new Float64Array(cost.length);
  cost.set(before);
  before.forEach((here, level) => {
    if (here === Number.POSITIVE_INFINITY) return;
    let at = next[level] ?? -1;
    for (let count = 1; count < price.length && at >= 0; count++) {
      const worth = at === space.open ? openWorth(space, level, count * units) : 0;
      const sum = here + (price[count] ?? Number.POSITIVE_INFINITY) - worth;
      if (sum < (cost[at] ?? 0)) {
        cost[at] = sum;
        back[at] = level * HALF + count;
      }
      at = next[at] ?? -1;
    }
  });
  return back;
}

/** Adds what the week's stock costs to every level that can be reached. */
function addStock(space: ScheduleSpace, prices: SchedulePrices, week: number, cost: Float64Array): void {
  const stock = space.costs[week];
  const bare = space.after[week] ?? 0;
  for (let level = 0; level < cost.length; level++) {
    const sum = (cost[level] ?? 0) + (stock?.[level] ?? 0);
    const isThere = sum < Number.POSITIVE_INFINITY;
    cost[level] = isThere ? sum + prices.roomMinor(week, bare + (space.levels[level] ?? 0)) : sum;
  }
}

function packsBack(steps: readonly Step[], last: number): Map<number, number> {
  const found = new Map<number, number>();
  let level = last;
  for (const { each, back } of steps.toReversed()) {
    const count = (back[level] ?? 0) % HALF;
    if (count === 0) continue;
    found.set(each.slot.number, count * each.bundle);
    level = Math.floor((back[level] ?? 0) / HALF);
  }
  return found;
}
