import type { CostedMix } from "#lib/cushioning/purchase/costed-mix";
import type { MixOffer, MixQuestion } from "#lib/cushioning/purchase/mix-question";

/**
 * The offer of a supply of which another pack is asked about: the one that the plan buys most units of; where it buys
 * none, the one that is cheapest for each unit of a single pack.
 *
 * @param question all of the mix
 * @param plan a plan for it
 * @param supplyId a supply
 * @returns the offer, sold out or not; null where the supply has none with a price
 */
export function offerToProbe(
  question: MixQuestion,
  { orders }: Pick<CostedMix, "orders">,
  supplyId: string,
): MixOffer | null {
  const packs = new Map(orders.flatMap(({ lines }) => lines.map((line) => [line.offerId, line.packs])));
  const offers = question.offers.filter((offer) => offer.supplyId === supplyId && offer.steps !== null);
  const bought = (offer: MixOffer) => (packs.get(offer.id) ?? 0) * offer.unitsPerPack;
  const unitMinor = ({ steps, unitsPerPack }: MixOffer) => (steps?.[0]?.priceMinor ?? 0) / unitsPerPack;
  return offers.toSorted((a, b) => bought(b) - bought(a) || unitMinor(a) - unitMinor(b))[0] ?? null;
}
