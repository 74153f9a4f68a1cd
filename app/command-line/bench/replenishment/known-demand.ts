import { sumGrid } from "#lib/forecast/sum-grid";
import type { SumSpread } from "#lib/forecast/sum-spread";
import { type ReorderPoint, reorderPoint } from "#lib/replenishment/reorder-point";
import { undershoot } from "#lib/replenishment/undershoot";
import { type GridDistribution, gridMixture } from "#lib/statistics/grid-distribution";

/** Weekly use that is known to its last digit: negative binomial with mean m and variance m + k m². */
export type KnownDemand = { readonly name: string; readonly mean: number; readonly k: number };

/** A lead time in weeks, with its chance. */
export type LeadTime = { readonly weeks: number; readonly chance: number };

/**
 * Smooth and erratic use come nearly every week, intermittent and lumpy use rarely; erratic and lumpy amounts differ
 * much. Mean interval between uses 1.32, squared variation of the amounts 0.49 (Syntetos, Boylan and Croston 2005, from
 * memory); a test holds the four against these limits.
 */
export const DEMANDS: readonly KnownDemand[] = [
  { name: "smooth", mean: 12, k: 0.02 },
  { name: "erratic", mean: 10, k: 0.8 },
  { name: "intermittent", mean: 0.5, k: 0 },
  { name: "lumpy", mean: 3, k: 1.5 },
];

/** So lumpy that eight weeks cannot show it: told beside the others, without a target. */
export const VERY_LUMPY: KnownDemand = { name: "very lumpy", mean: 2, k: 4 };

/** Much of it, so that one unit hardly changes the service. */
export const FINE_DEMANDS: readonly KnownDemand[] = [
  { name: "smooth, much", mean: 120, k: 0.05 },
  { name: "erratic, much", mean: 90, k: 0.7 },
];

export const LEAD_TIMES: readonly LeadTime[] = [
  { weeks: 1, chance: 0.7 },
  { weeks: 2, chance: 0.2 },
  { weeks: 3, chance: 0.1 },
];

export const LEVELS: readonly number[] = [0.9, 0.95, 0.98];

/**
 * Spread of sums of independent weeks.
 *
 * @param demand known use
 */
export function knownSpread({ k }: KnownDemand): SumSpread {
  return { perUse: 1, whole: true, dispersions: [1, 2, 3].map((weeks) => k / weeks) };
}

/**
 * Use until the delivery, with the lead time as it varies.
 *
 * @param demand known use
 */
export function leadTimeUse(demand: KnownDemand): GridDistribution {
  return gridMixture(
    LEAD_TIMES.map(({ weeks, chance }) => ({
      chance,
      grid: sumGrid(knownSpread(demand), { mean: demand.mean * weeks, weeks }, 1),
    })),
  );
}

/**
 * Reorder point of known use that is looked at every week.
 *
 * @param demand known use
 * @param level wanted share of order cycles without a shortage
 */
export function knownPoint(demand: KnownDemand, level: number): ReorderPoint {
  return reorderPoint({
    undershoot: undershoot(sumGrid(knownSpread(demand), { mean: demand.mean, weeks: 1 }, 1), true),
    leadTimeUse: leadTimeUse(demand),
    whole: true,
    goal: { kind: "cycles", level },
    orderAmount: orderAmount(demand),
  });
}

/**
 * What an order brings: half a year's use, so that cycles do not touch.
 *
 * @param demand known use
 */
export function orderAmount({ mean }: KnownDemand): number {
  return Math.ceil(mean * 26);
}
