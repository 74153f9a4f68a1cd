import { sumGrid } from "#lib/forecast/sum-grid";
import type { GridDistribution } from "#lib/statistics/grid-distribution";
import { type KnownDemand, knownSpread, LEAD_TIMES, orderAmount } from "./known-demand";

/**
 * Share of order cycles without a shortage, played: each week's use is drawn, stock is looked at once a week, an order
 * goes out at or under the point and takes one of the lead times.
 *
 * @param demand known use
 * @param point stock position at or under which an order goes out
 * @param play how many cycles, and the source of chances
 */
export function cycleService(
  demand: KnownDemand,
  point: number,
  { cycles, chance }: { readonly cycles: number; readonly chance: () => number },
): number {
  const weekly = tableOf(sumGrid(knownSpread(demand), { mean: demand.mean, weeks: 1 }, 1));
  const lot = orderAmount(demand);
  let onHand = point + lot;
  let wellEnded = 0;
  for (let cycle = 0; cycle < cycles; cycle += 1) {
    while (onHand > point) onHand -= drawn(weekly, chance());
    for (let weeks = leadTime(chance()); weeks > 0; weeks -= 1) onHand -= drawn(weekly, chance());
    if (onHand >= 0) wellEnded += 1;
    // A large lot brings stock above the point again; a week in which it was far below it takes two.
    while (onHand <= point) onHand += lot;
  }
  return wellEnded / cycles;
}

function leadTime(drawnChance: number): number {
  let rest = drawnChance;
  for (const { weeks, chance } of LEAD_TIMES) {
    rest -= chance;
    if (rest < 0) return weeks;
  }
  return LEAD_TIMES.at(-1)?.weeks ?? 0;
}

/** For each of so many equal parts of chance the least count that can be meant: the search starts there. */
type Table = { readonly upTo: Float64Array; readonly starts: Int32Array };
const PARTS = 1024;

function tableOf(grid: GridDistribution): Table {
  const upTo = new Float64Array(grid.chances.length);
  let sum = 0;
  for (const [at, chance] of grid.chances.entries()) {
    sum += chance;
    upTo[at] = sum;
  }
  const starts = new Int32Array(PARTS);
  let at = 0;
  for (let part = 0; part < PARTS; part += 1) {
    while (at < upTo.length - 1 && (upTo[at] ?? 1) < part / PARTS) at += 1;
    starts[part] = at;
  }
  return { upTo, starts };
}

function drawn({ upTo, starts }: Table, chance: number): number {
  let at = starts[Math.floor(chance * PARTS)] ?? 0;
  while (at < upTo.length - 1 && (upTo[at] ?? 1) <= chance) at += 1;
  return at;
}
