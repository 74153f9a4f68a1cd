import type { PairSpace } from "#lib/purchasing/plan/pair-space";
import { openWorth, type SpaceSlot } from "#lib/purchasing/plan/schedule-space";

/** What packs and room cost while a pair is scheduled. */
export type PairPrices = {
  readonly slotMinor: (slot: SpaceSlot, goods: number) => number;
  /** by week: price of a litre right after arrivals */
  readonly litreMinor: Float64Array;
};

/** Orders of a pair: packs by slot number, least litres right after the arrivals of each week, least cost. */
export type PairSchedule = {
  readonly packs: ReadonlyMap<number, number>;
  readonly litres: Float64Array;
  readonly minor: number;
};

type Step = { readonly cost: Float64Array<ArrayBuffer>; readonly from: Int32Array };
type Back =
  | { readonly kind: "slot"; readonly slot: number; readonly packs: Int32Array; readonly from: Int32Array }
  | { readonly kind: "move"; readonly week: number; readonly from: Int32Array };

/**
 * Orders of two supplies of which one stands in for the other, at a cost that none of their plans is below:
 * dynamic programming over weeks, over what each has ordered and over the cell of what has been moved.
 *
 * @param space levels, cells and least costs
 * @param prices what packs and litres cost
 * @returns the orders, and a bound of their cost in minor units
 */
export function bestPair(space: PairSpace, prices: PairPrices): PairSchedule {
  const size = space.from.levels.length * space.to.levels.length * space.cells;
  let cost = new Float64Array(size).fill(Number.POSITIVE_INFINITY);
  cost[0] = 0;
  const backs: Back[] = [];
  for (let week = 0; week < space.most.length; week++) {
    for (const side of ["from", "to"] as const) {
      for (const each of space[side].slots[week] ?? []) {
        const step = slotStep(space, side, each, cost, prices);
        backs.push({ kind: "slot", slot: each.slot.number, ...step });
        cost = step.cost;
      }
    }
    const step = moveStep(space, week, cost, prices.litreMinor[week] ?? 0);
    backs.push({ kind: "move", week, from: step.from });
    cost = step.cost;
  }
  let best = 0;
  for (let state = 1; state < size; state++) if ((cost[state] ?? 0) < (cost[best] ?? 0)) best = state;
  return { ...traced(space, backs, best), minor: cost[best] ?? Number.POSITIVE_INFINITY };
}

function slotStep(
  space: PairSpace,
  side: "from" | "to",
  each: SpaceSlot,
  cost: Float64Array<ArrayBuffer>,
  prices: PairPrices,
): Step & { packs: Int32Array } {
  const step = { cost: cost.slice(), packs: new Int32Array(cost.length), from: new Int32Array(cost.length) };
  const price = each.goods.map((goods, count) => (count === 0 ? 0 : prices.slotMinor(each, goods)));
  const own = space[side].levels.length;
  const stride = side === "from" ? space.to.levels.length * space.cells : space.cells;
  for (let level = 0; level < own; level++) {
    let to = each.next[level] ?? -1;
    for (let count = 1; count < price.length && to >= 0; count++) {
      const units = count * each.bundle * each.slot.offer.unitsPerPack;
      const worth = to === space[side].open ? openWorth(space[side], level, units) : 0;
      const minor = at(price, count) - worth;
      const move = { minor, packs: count * each.bundle, shift: (to - level) * stride };
      for (let base = level * stride; base < cost.length; base += own * stride) {
        ordered(cost, step, base, base + stride, move);
      }
      to = each.next[to] ?? -1;
    }
  }
  return step;
}

/** Orders packs from each of some states where that is the cheapest way to the state it leads to. */
function ordered(
  cost: Float64Array,
  step: Step & { readonly packs: Int32Array },
  first: number,
  end: number,
  { minor, packs, shift }: { readonly minor: number; readonly packs: number; readonly shift: number },
): void {
  if (minor === Number.POSITIVE_INFINITY) return;
  for (let state = first; state < end; state++) {
    const sum = at(cost, state) + minor;
    if (sum >= at(step.cost, state + shift)) continue;
    step.cost[state + shift] = sum;
    step.packs[state + shift] = packs;
    step.from[state + shift] = state;
  }
}

/** Charges the room, moves what may be moved, and adds the week's stock costs. */
function moveStep(space: PairSpace, week: number, cost: Float64Array, litreMinor: number): Step {
  const { from, to, cells, width, ratio } = space;
  const step = {
    cost: new Float64Array(cost.length).fill(Number.POSITIVE_INFINITY),
    from: new Int32Array(cost.length),
  };
  const span = at(space.most, week) / width;
  const lends = chargesOf(space, "from", week, litreMinor);
  const takes = chargesOf(space, "to", week, litreMinor);
  for (let lent = 0; lent < from.levels.length; lent++) {
    // Only what is left after the supply's own need is moved.
    const spare = at(from.of.reach.end, week) + at(from.levels, lent) + 1e-7;
    const most = Math.min(cells - 1, Math.floor(spare / (ratio * width)));
    for (let taken = 0; taken < to.levels.length; taken++) {
      const base = (lent * to.levels.length + taken) * cells;
      for (let cell = 0; cell < cells; cell++) {
        const charge = at(lends, lent * cells + cell) + at(takes, taken * cells + cell);
        const reach = Math.floor(week === 0 ? span : cell + 1 + span);
        moved(
          step,
          base + cell,
          base + Math.max(cell, Math.min(most, reach)),
          at(cost, base + cell) + charge,
        );
      }
    }
  }
  const costs = space.costs[week];
  step.cost.forEach((sum, state) => {
    step.cost[state] = sum + (costs?.[state] ?? 0);
  });
  return step;
}

/** Moves from one cell to all up to another. */
function moved(step: Step, from: number, to: number, sum: number): void {
  if (sum === Number.POSITIVE_INFINITY) return;
  for (let state = from; state <= to; state++) {
    if (sum >= at(step.cost, state)) continue;
    step.cost[state] = sum;
    step.from[state] = from;
  }
}

/** An entry of a list that has it. */
const at = (list: ArrayLike<number>, index: number): number => list[index] ?? Number.NaN;

/** By level and cell of one side: what its room costs right after arrivals; Infinity above the most stock. */
function chargesOf(space: PairSpace, side: "from" | "to", week: number, litreMinor: number): Float64Array {
  const { of, levels } = space[side];
  const allowed = (of.reach.allowed[week] ?? Number.POSITIVE_INFINITY) + 1e-7;
  const charges = new Float64Array(levels.length * space.cells);
  for (let level = 0; level < levels.length; level++) {
    for (let cell = 0; cell < space.cells; cell++) {
      const after = afterOf(space, side, week, level, cell);
      const isOver = level > 0 && after > allowed;
      const minor = litreMinor * of.supply.litres * Math.max(0, after);
      charges[level * space.cells + cell] = isOver ? Number.POSITIVE_INFINITY : minor;
    }
  }
  return charges;
}

/** Least stock of one side right after the arrivals of a week, given the cell where the week before ended. */
function afterOf(space: PairSpace, side: "from" | "to", week: number, level: number, cell: number): number {
  const { of, levels } = space[side];
  const bare = (of.reach.after[week] ?? 0) + (levels[level] ?? 0);
  if (week === 0) return bare;
  return side === "from" ? bare - (cell + 1) * space.width * space.ratio : bare + cell * space.width;
}

function traced(
  space: PairSpace,
  backs: readonly Back[],
  last: number,
): Pick<PairSchedule, "packs" | "litres"> {
  const packs = new Map<number, number>();
  const litres = new Float64Array(space.most.length);
  let state = last;
  for (const back of backs.toReversed()) {
    if (back.kind === "slot") {
      const count = back.packs[state] ?? 0;
      if (count === 0) continue;
      packs.set(back.slot, count);
      state = back.from[state] ?? state;
    } else {
      state = back.from[state] ?? state;
      litres[back.week] = litresOf(space, back.week, state);
    }
  }
  return { packs, litres };
}

/** Least litres of both right after the arrivals of a week. */
function litresOf(space: PairSpace, week: number, state: number): number {
  const { from, to, cells } = space;
  const level = Math.floor(state / cells);
  const lent = afterOf(space, "from", week, Math.floor(level / to.levels.length), state % cells);
  const taken = afterOf(space, "to", week, level % to.levels.length, state % cells);
  return from.of.supply.litres * Math.max(0, lent) + to.of.supply.litres * Math.max(0, taken);
}
