import { type PackedWeight, packedWeightQuantile, packedWeightUpTo } from "#lib/packing/weight/packed-weight";
import type { WeightSpread } from "#lib/postage/weight-spread";

/** What is practically never weighed. */
const TOP_CHANCE = 0.999_999;

/**
 * What a parcel may weigh, as postage is worked out with it.
 *
 * @param weight learned from past parcels
 * @returns the same distribution; a guess stays one
 * @example weightSpreadOf(weight).basis.isGuess // true
 */
export function weightSpreadOf(weight: PackedWeight): WeightSpread {
  return {
    kind: "cumulative",
    upTo: (mg) => packedWeightUpTo(weight, mg),
    topMg: packedWeightQuantile(weight, TOP_CHANCE),
    basis: { parcels: weight.parcels, isGuess: weight.guess },
  };
}
