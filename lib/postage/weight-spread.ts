import { type GridDistribution, gridUpTo } from "#lib/statistics/grid-distribution";
import { normalCumulative } from "#lib/statistics/normal-cumulative";

/** Where a spread comes from; passed through to what is worked out with it. */
export type SpreadBasis = {
  /** parcels that were weighed */
  readonly parcels: number;
  /** whether it is a formula's guess and not learned from parcels */
  readonly isGuess: boolean;
};

/** What a parcel may weigh when it is packed, in milligrams. */
export type WeightSpread = { readonly basis: SpreadBasis } & (
  | { readonly kind: "normal"; readonly meanMg: number; readonly deviationMg: number }
  /** what like parcels weighed more (or less, below zero) than was predicted; each as likely as another */
  | { readonly kind: "errors"; readonly predictedMg: number; readonly errorsMg: readonly number[] }
  /** `mg` is not exceeded with this chance; both rise; at least two, even between and past them */
  | { readonly kind: "quantiles"; readonly points: readonly QuantilePoint[] }
  /** step in milligrams */
  | { readonly kind: "grid"; readonly grid: GridDistribution }
  /** any other: the chance not to exceed a stored weight, never falling, and a weight that is practically never exceeded */
  | { readonly kind: "cumulative"; readonly upTo: (mg: number) => number; readonly topMg: number }
);

type QuantilePoint = { readonly chance: number; readonly mg: number };

/** Half of the last stored milligram: 5 oz, stored as 141,748 mg, is not over 5 oz. */
const STORED_HALF = 0.5;
/** Deviations from the mean beyond which nothing is left that matters. */
const FARTHEST = 9;

/**
 * Chance that a parcel does not weigh more than a limit.
 *
 * @param spread what it may weigh
 * @param mg the limit, milligrams; may be infinite
 * @returns from 0 to 1, never falling with the limit
 * @throws RangeError if the spread is empty, or its deviation or its points are not as said
 * @example spreadUpTo({ kind: "errors", predictedMg: 900000, errorsMg: [0, 50000], basis }, 920000) // 0.5
 */
export function spreadUpTo(spread: WeightSpread, mg: number): number {
  if (mg === Number.POSITIVE_INFINITY) return 1;
  switch (spread.kind) {
    case "normal":
      return normalUpTo(spread.meanMg, spread.deviationMg, mg);
    case "errors":
      return shareUpTo(spread.errorsMg, mg + STORED_HALF - spread.predictedMg);
    case "quantiles":
      return quantilesUpTo(spread.points, mg);
    case "grid":
      return mg + STORED_HALF < 0 ? 0 : gridUpTo(spread.grid, mg + STORED_HALF);
    case "cumulative":
      return spread.upTo(mg);
  }
}

function normalUpTo(mean: number, deviation: number, mg: number): number {
  if (!(deviation >= 0 && Number.isFinite(mean))) {
    throw new RangeError(`spreadUpTo requires a deviation from 0, got ${deviation} about ${mean}`);
  }
  if (deviation === 0) return mean <= mg + STORED_HALF ? 1 : 0;
  return normalCumulative((mg - mean) / deviation);
}

function shareUpTo(errors: readonly number[], most: number): number {
  if (errors.length === 0) throw new RangeError("spreadUpTo requires at least one error, got none");
  return errors.filter((error) => error <= most).length / errors.length;
}

/** Even between two points; the outer slopes go on until 0 and 1 are reached. */
function quantilesUpTo(points: readonly QuantilePoint[], mg: number): number {
  checkPoints(points);
  const above = points.findIndex((point) => point.mg > mg);
  const at = Math.min(Math.max(above === -1 ? points.length - 1 : above, 1), points.length - 1);
  const [low, high] = [points[at - 1], points[at]];
  if (low === undefined || high === undefined) return 0;
  const chance = low.chance + ((high.chance - low.chance) * (mg - low.mg)) / (high.mg - low.mg);
  return Math.min(1, Math.max(0, chance));
}

function checkPoints(points: readonly QuantilePoint[]): void {
  const isRising = points.every(({ chance, mg }, at) => {
    const before = points[at - 1];
    return chance >= 0 && chance <= 1 && (before === undefined || (chance > before.chance && mg > before.mg));
  });
  if (!isRising || points.length < 2) {
    throw new RangeError(`spreadUpTo requires two or more rising points, got ${JSON.stringify(points)}`);
  }
}

/**
 * A weight that is practically never exceeded.
 *
 * @param spread what a parcel may weigh
 * @returns milligrams
 */
export function spreadTop(spread: WeightSpread): number {
  switch (spread.kind) {
    case "normal":
      return spread.meanMg + FARTHEST * spread.deviationMg;
    case "errors":
      return spread.predictedMg + Math.max(...spread.errorsMg);
    case "quantiles":
      return quantilesTop(spread.points);
    case "grid":
      return (spread.grid.chances.length - 1) * spread.grid.step;
    case "cumulative":
      return spread.topMg;
  }
}

function quantilesTop(points: readonly QuantilePoint[]): number {
  checkPoints(points);
  const [low, high] = [points.at(-2), points.at(-1)];
  if (low === undefined || high === undefined) return 0;
  return high.mg + ((1 - high.chance) * (high.mg - low.mg)) / (high.chance - low.chance);
}
