import { welchTest } from "#lib/statistics/welch-test";

/** `too-few`: not enough parcels to tell; `steady`: no more than the parcels differ among themselves. */
export type CostTrend = {
  readonly kind: "rising" | "falling" | "steady" | "too-few";
  /** later mean less earlier mean, in the unit of the costs; null where a period has no parcel */
  readonly difference: number | null;
};

/** Fewer parcels in a period say little of how much parcels differ; a guess. */
export const LEAST_PARCELS = 5;
/** Chance that luck makes up a trend anywhere in one table. */
export const TREND_LUCK = 0.05;

/**
 * Whether parcels cost more or less than they did. A trend is told only where luck, in all comparisons of the table
 * together, would make one up less than once in twenty times, and where the means differ by as much as can be paid.
 *
 * @param before - what each parcel of the earlier period cost
 * @param now - what each parcel of the later period cost, in the same unit
 * @param table - `comparisons`: how many the table makes, at least 1. `least`: the least difference that is worth telling
 * @returns kind and difference
 * @see Welch's test with Bonferroni's correction, common practice
 * @example costTrend([100, 101, 99, 100, 100], [120, 121, 119, 120, 120], { comparisons: 8, least: 1 }).kind // "rising"
 */
export function costTrend(
  before: readonly number[],
  now: readonly number[],
  { comparisons, least }: { readonly comparisons: number; readonly least: number },
): CostTrend {
  const difference = before.length === 0 || now.length === 0 ? null : meanOf(now) - meanOf(before);
  if (difference === null || Math.min(before.length, now.length) < LEAST_PARCELS) {
    return { kind: "too-few", difference };
  }
  const { byLuck } = welchTest(before, now);
  if (byLuck * comparisons >= TREND_LUCK || Math.abs(difference) < least)
    return { kind: "steady", difference };
  return { kind: difference > 0 ? "rising" : "falling", difference };
}

function meanOf(costs: readonly number[]): number {
  return costs.reduce((sum, cost) => sum + cost, 0) / costs.length;
}
