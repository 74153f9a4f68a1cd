import type { ModelSupply } from "#lib/purchasing/plan/model-columns";
import type { PlanSupply } from "#lib/purchasing/plan/plan-supply";
import { type ScheduleSpace, scheduleSpace } from "#lib/purchasing/plan/schedule-space";
import { mostStandIn } from "#lib/purchasing/plan/supply-reach";

/** What one supply and the one that stands in for it could order and move between them. */
export type PairSpace = {
  readonly from: ScheduleSpace;
  readonly to: ScheduleSpace;
  readonly ratio: number;
  /** what has been moved by a week lies in one of so many cells */
  readonly cells: number;
  /** width of a cell, use units of the supply that is stood in for */
  readonly width: number;
  /** most that can be moved in each week, use units of the supply that is stood in for */
  readonly most: readonly number[];
  /** by week, then level of `from`, level of `to` and cell: what the week's stock costs at least */
  readonly costs: readonly Float64Array[];
};

/**
 * Sets up the search for the orders of two supplies of which one stands in for the other. What has been moved is
 * known by its cell only, and each week's stock costs what it costs at the best place in the cell, so that the
 * search finds no more than the least cost.
 *
 * @param from the supply that stands in
 * @param to the supply that is stood in for
 * @param ratio use units of `from` for one of `to`
 * @param weeks number of weeks
 * @param cells more of them make the bound tighter and the search longer
 * @returns levels, slots and the least stock costs
 */
export function pairSpace(
  from: ModelSupply,
  to: ModelSupply,
  ratio: number,
  weeks: number,
  cells: number,
): PairSpace {
  const most = Array.from({ length: weeks }, (_, week) => mostStandIn(to.supply, week));
  const sum = most.reduce((total, units) => total + units, 0);
  // What may be moved leaves room for more orders of the supply that it is moved from.
  const lent = most.map((units) => -units * ratio);
  const bare = {
    from: scheduleSpace(from, weeks, lent, "open"),
    to: scheduleSpace(to, weeks, [], "open"),
    ratio,
    cells,
    width: Math.max(1e-9, (sum / cells) * (1 + 1e-12)),
    most,
  };
  return { ...bare, costs: most.map((_, week) => leastCosts(bare, week, weeks)) };
}

function leastCosts(space: Omit<PairSpace, "costs">, week: number, weeks: number): Float64Array {
  const { from, to, ratio, cells, width } = space;
  const isLast = week === weeks - 1;
  const least = new Float64Array(from.levels.length * to.levels.length * cells);
  let at = 0;
  for (const fromLevel of from.levels) {
    const lends = (from.of.reach.end[week] ?? 0) + fromLevel;
    for (const toLevel of to.levels) {
      const takes = (to.of.reach.end[week] ?? 0) + toLevel;
      const cost = (moved: number) =>
        stockMinor(from.of.supply, week, isLast, lends - ratio * moved) +
        stockMinor(to.of.supply, week, isLast, takes + moved);
      const wanted = [from.of.supply.wanted[week] ?? 0, to.of.supply.wanted[week] ?? 0] as const;
      const bends = [lends / ratio, (lends - wanted[0]) / ratio, -takes, wanted[1] - takes];
      fillLeast(least.subarray(at, at + cells), width, cost, bends);
      at += cells;
    }
  }
  return least;
}

/** Costs are straight between bends, so that within a cell an end or a bend is the least. */
function fillLeast(
  least: Float64Array,
  width: number,
  cost: (moved: number) => number,
  bends: readonly number[],
): void {
  let before = cost(0);
  for (let cell = 0; cell < least.length; cell++) {
    const next = cost((cell + 1) * width);
    least[cell] = Math.min(before, next);
    before = next;
  }
  for (const moved of bends) {
    const cell = Math.floor(moved / width);
    const now = least[cell];
    if (moved > 0 && now !== undefined) least[cell] = Math.min(now, cost(moved));
  }
}

/**
 * What a supply's stock at the end of a week costs: holding, shortage, in the last week less its worth.
 *
 * @param supply the supply
 * @param week number of the week, from 0
 * @param isLast whether it is the last one
 * @param stock use units, below 0 what is owed
 * @returns minor units
 */
export function stockMinor(supply: PlanSupply, week: number, isLast: boolean, stock: number): number {
  const missing = Math.max(0, (supply.wanted[week] ?? 0) - stock);
  const value = isLast ? supply.endValueMinor : 0;
  return supply.holdingMinor * Math.max(0, stock) + supply.shortMinor * missing - value * stock;
}
