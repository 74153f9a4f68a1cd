import type { PairSpace } from "#lib/purchasing/plan/pair-space";
import { stockMinor } from "#lib/purchasing/plan/pair-space";
import type { ChosenStandIn } from "#lib/purchasing/plan/plan-choice";

/** What has been moved by a week is looked at in so many steps. */
const STEPS = 200;

/**
 * What stands in week by week when a pair's orders are known: dynamic programming over what has been moved, in
 * steps, within the most stock of both and never out of what is owed.
 *
 * @param space the pair
 * @param packs orders of both, by slot number
 * @returns stand-ins; a plan to build on, no bound
 */
export function pairStandIns(space: PairSpace, packs: ReadonlyMap<number, number>): ChosenStandIn[] {
  const step = space.most.reduce((sum, units) => sum + units, 0) / STEPS;
  if (step <= 0) return [];
  const arrived = { from: arrivedBy(space, "from", packs), to: arrivedBy(space, "to", packs) };
  let cost = new Float64Array(STEPS + 1).fill(Number.POSITIVE_INFINITY);
  cost[0] = 0;
  const backs: Int32Array[] = [];
  for (let week = 0; week < space.most.length; week++) {
    const { next, back } = weekStep({ space, step, arrived, week }, cost);
    cost = next;
    backs.push(back);
  }
  return movedBack(space, step, backs, cost.indexOf(Math.min(...cost)));
}

type Side = "from" | "to";
type PairWeek = {
  readonly space: PairSpace;
  readonly step: number;
  /** by week: use units that orders have brought */
  readonly arrived: Readonly<Record<Side, readonly number[]>>;
  readonly week: number;
};

/** From what has been moved before a week to what has been moved by its end, each at its least cost. */
function weekStep(of: PairWeek, cost: Float64Array) {
  const { space, step, week } = of;
  const next = new Float64Array(STEPS + 1).fill(Number.POSITIVE_INFINITY);
  const back = new Int32Array(STEPS + 1);
  const stockCosts = next.map((_, moved) => costAt(of, moved * step));
  const reach = Math.floor(((space.most[week] ?? 0) + 1e-9) / step);
  cost.forEach((sum, before) => {
    if (sum === Number.POSITIVE_INFINITY || isTooMuch(of, before * step)) return;
    for (let now = before; now <= Math.min(STEPS, before + reach); now++) {
      if (now > before && stockOf(of, "from", "end", now * step) < 0) break;
      const minor = sum + (stockCosts[now] ?? 0);
      if (minor >= (next[now] ?? 0)) continue;
      next[now] = minor;
      back[now] = before;
    }
  });
  return { next, back };
}

function stockOf(
  { space, arrived, week }: PairWeek,
  side: Side,
  when: "after" | "end",
  moved: number,
): number {
  const bare = (space[side].of.reach[when][week] ?? 0) + (arrived[side][week] ?? 0);
  return side === "from" ? bare - space.ratio * moved : bare + moved;
}

function costAt(of: PairWeek, moved: number): number {
  const { space, week } = of;
  const isLast = week === space.most.length - 1;
  return (["from", "to"] as const)
    .map((side) => stockMinor(space[side].of.supply, week, isLast, stockOf(of, side, "end", moved)))
    .reduce((sum, minor) => sum + minor, 0);
}

/** Whether orders bring more than the most stock, with so much moved before the week. */
function isTooMuch(of: PairWeek, moved: number): boolean {
  const { space, arrived, week } = of;
  return (["from", "to"] as const).some((side) => {
    const allowed = space[side].of.reach.allowed[week] ?? Number.POSITIVE_INFINITY;
    return (arrived[side][week] ?? 0) > 0 && stockOf(of, side, "after", moved) > allowed + 1e-7;
  });
}

/** Use units that orders have brought by each week. */
function arrivedBy(space: PairSpace, side: Side, packs: ReadonlyMap<number, number>): readonly number[] {
  let sum = 0;
  return space[side].slots.map((slots) => {
    for (const { slot } of slots) sum += (packs.get(slot.number) ?? 0) * slot.offer.unitsPerPack;
    return sum;
  });
}

function movedBack(
  space: PairSpace,
  step: number,
  backs: readonly Int32Array[],
  last: number,
): ChosenStandIn[] {
  const found: ChosenStandIn[] = [];
  let now = last;
  for (let week = backs.length - 1; week >= 0; week--) {
    const before = backs[week]?.[now] ?? 0;
    const units = Math.min(space.most[week] ?? 0, (now - before) * step);
    const ids = { fromSupplyId: space.from.of.supply.id, toSupplyId: space.to.of.supply.id };
    if (units > 0) found.unshift({ ...ids, week, units });
    now = before;
  }
  return found;
}
