import { packedWeightQuantile, packedWeightUpTo } from "#lib/packing/weight/packed-weight";
import { expectedPostage, type ZoneShare } from "#lib/postage/expected-postage";
import type { RateCard } from "#lib/postage/rate-card";
import type { Day } from "#lib/units/day";
import type { WeightOutlook } from "../weight-outlook";

/** The rate card that holds, null where there is none, and how many parcels go where. */
export type ListingPostage = { readonly card: RateCard | null; readonly zones: readonly ZoneShare[] };

/** What is practically never weighed. */
const TOP_CHANCE = 0.999_999;

/**
 * Postage over what the parcel may weigh and where it may go, by weight alone.
 *
 * @param outlook what the parcel may weigh; null where that is not known
 * @param postage the card and the zones
 * @param shipDay the day it would be sent
 * @returns minor units, not rounded; null without a card or a weight
 */
export function likelyPostage(
  outlook: WeightOutlook | null,
  { card, zones }: ListingPostage,
  shipDay: Day,
): number | null {
  if (outlook === null || card === null || zones.length === 0) return null;
  const { weight } = outlook;
  const expected = expectedPostage({
    card,
    zones,
    size: null,
    shipDay,
    spread: {
      kind: "cumulative",
      upTo: (mg) => packedWeightUpTo(weight, mg),
      topMg: packedWeightQuantile(weight, TOP_CHANCE),
      basis: { parcels: weight.parcels, isGuess: weight.guess },
    },
  });
  return expected.kind === "expected" ? expected.minor : null;
}
