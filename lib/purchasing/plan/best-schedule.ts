import type { ScheduleSpace, SpaceSlot } from "#lib/purchasing/plan/schedule-space";

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
  cost[0] = 0;
  const steps: Step[] = [];
  for (let week = 0; week < costs.length; week++) {
    for (const each of slots[week] ?? []) {
      const step = orderStep(each, cost, prices);
      if (step === null) continue;
      steps.push(step);
      cost = step.cost;
    }
    addStock(space, prices, week, cost);
  }
  let best = 0;
  for (let level = 1; level < cost.length; level++) if ((cost[level] ?? 0) < (cost[best] ?? 0)) best = level;
  return { packs: packsBack(steps, best), minor: cost[best] ?? Number.POSITIVE_INFINITY };
}

/** One slot's choice: packs ordered to come to each level, and the level before. */
type Step = {
  readonly slot: number;
  readonly cost: Float64Array<ArrayBuffer>;
  readonly packs: Int32Array;
  readonly from: Int32Array;
};

/** Null where the slot takes nothing. */
function orderStep(each: SpaceSlot, cost: Float64Array<ArrayBuffer>, prices: SchedulePrices): Step | null {
  const { next, goods, bundle, slot } = each;
  const price = goods.map((minor, number) => (number === 0 ? 0 : prices.slotMinor(each, minor)));
  if (price.every((minor, number) => number === 0 || minor === Number.POSITIVE_INFINITY)) return null;
  const better = cost.slice();
  const packs = new Int32Array(cost.length);
  const from = new Int32Array(cost.length);
  for (let level = 0; level < cost.length; level++) {
    const before = cost[level] ?? Number.POSITIVE_INFINITY;
    let at = before === Number.POSITIVE_INFINITY ? -1 : (next[level] ?? -1);
    for (let number = 1; number < price.length && at >= 0; number++) {
      const sum = before + (price[number] ?? Number.POSITIVE_INFINITY);
      if (sum < (better[at] ?? 0)) {
        better[at] = sum;
        packs[at] = number * bundle;
        from[at] = level;
      }
      at = next[at] ?? -1;
    }
  }
  return { slot: slot.number, cost: better, packs, from };
}

/** Adds what the week's stock costs to every level that can be reached. */
function addStock(space: ScheduleSpace, prices: SchedulePrices, week: number, cost: Float64Array): void {
  const stock = space.costs[week];
  const bare = space.after[week] ?? 0;
  for (let level = 0; level < cost.length; level++) {
    const before = cost[level] ?? Number.POSITIVE_INFINITY;
    if (before === Number.POSITIVE_INFINITY) continue;
    cost[level] = before + (stock?.[level] ?? 0) + prices.roomMinor(week, bare + (space.levels[level] ?? 0));
  }
}

function packsBack(steps: readonly Step[], last: number): Map<number, number> {
  const found = new Map<number, number>();
  let level = last;
  for (const { slot, packs, from } of steps.toReversed()) {
    const number = packs[level] ?? 0;
    if (number === 0) continue;
    found.set(slot, number);
    level = from[level] ?? level;
  }
  return found;
}
