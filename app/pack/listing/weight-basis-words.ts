import type { PackedWeight } from "#lib/packing/weight/packed-weight";
import type { PackingChoices } from "../packing-choices";
import type { ListingAnswer } from "./listing-answer";

const FORMULA = "a tenth more, at least 50 g, is taken to hold 9 times in 10";

/**
 * What a weight at listing time rests on.
 *
 * @param from what the bill was made from
 * @param weight what the parcel may weigh
 * @param choices what is known of the shop's weights
 * @returns words that end with a full stop
 */
export function weightBasisWords(
  from: ListingAnswer["from"],
  { guess, parcels }: Pick<PackedWeight, "guess" | "parcels">,
  { weights }: Pick<PackingChoices, "weights">,
): string {
  if (!guess) return `from ${parcels} weighed parcels.`;
  if (from === "card") return "a guess by the card's bill.";
  const others = weights.shop.parcels;
  if (others === 0) return `a guess from its sizes: ${FORMULA}.`;
  return `a guess from its sizes, corrected as your ${others} weighed parcels of other kinds differed from their bills: ${FORMULA}, or as much as those differed where that is more.`;
}
