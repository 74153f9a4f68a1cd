import type { CostTrend } from "#lib/packing/cost-change/cost-trend";
import { costValue } from "#lib/units/money";
import { costText } from "../cost-text";

/**
 * How the cost of a parcel stands against the span before, in words.
 *
 * @param trend what the parcels say
 * @param shop currency and its digits after the point
 * @returns the word first, then the difference where it is known
 * @example trendWords({ kind: "rising", difference: 110_000 }, shop) // "rising: $0.11 more"
 */
export function trendWords(
  { kind, difference }: CostTrend,
  shop: { readonly currency: string; readonly minorDigits: number },
): string {
  if (difference === null) return "nothing to compare";
  const money = costText(costValue(Math.round(Math.abs(difference))), shop);
  const apart = `${money} ${difference > 0 ? "more" : "less"}`;
  if (kind === "too-few") return `too few parcels to tell (${apart})`;
  return kind === "steady" ? `no more than parcels differ (${apart})` : `${kind}: ${apart}`;
}
