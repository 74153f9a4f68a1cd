import type { WayCost } from "#lib/cushioning/way-cost";
import type { PackedPieces } from "#lib/cushioning/way-to-pack";
import type { CushionStyle } from "#lib/packing/recipe-version";

/** Parcels with the same pieces, and what each way to pack one costs. */
export type ParcelKind = {
  readonly pieces: PackedPieces;
  /** how many, sent or expected; from 0, may be a fraction */
  readonly parcels: number;
  readonly costs: readonly WayCost[];
};

/** What all parcels cost by one rule of packing. */
export type KindsTotal = {
  /** minor units, not rounded */
  readonly totalMinor: number;
  readonly materialsMinor: number;
  readonly postageMinor: number;
  /** parcels that have no recipe in the style asked for and are packed in their cheapest other way */
  readonly otherwise: number;
};

/**
 * What parcels cost when all are packed in one style, or each in its cheapest way.
 *
 * @param kinds parcels with their ways; those without any way count as nothing
 * @param rule a style, or "best" for the cheapest of each kind
 * @returns sums over all parcels
 * @example totalOf(kinds, "best").totalMinor <= totalOf(kinds, "paper").totalMinor // true
 */
export function totalOf(kinds: readonly ParcelKind[], rule: CushionStyle | "best"): KindsTotal {
  const sum = { totalMinor: 0, materialsMinor: 0, postageMinor: 0, otherwise: 0 };
  for (const { costs, parcels } of kinds) {
    const asked = rule === "best" ? undefined : costs.find(({ way }) => way.style === rule);
    const taken = asked ?? cheapestWay(costs);
    if (taken === null) continue;
    sum.totalMinor += parcels * taken.totalMinor;
    sum.materialsMinor += parcels * taken.materialsMinor;
    sum.postageMinor += parcels * (taken.postageMinor ?? 0);
    if (rule !== "best" && asked === undefined) sum.otherwise += parcels;
  }
  return sum;
}

/**
 * The cheapest way to pack a parcel.
 *
 * @param costs of its ways
 * @returns null where there is none; of equals the first
 */
export function cheapestWay(costs: readonly WayCost[]): WayCost | null {
  return costs.reduce<WayCost | null>(
    (best, each) => (best === null || each.totalMinor < best.totalMinor ? each : best),
    null,
  );
}
