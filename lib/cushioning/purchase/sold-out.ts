import type { MixQuestion } from "#lib/cushioning/purchase/mix-question";

/**
 * The same question with no pack of some supplies to be had; what is on hand of them stays.
 *
 * @param question all of the mix
 * @param supplyIds supplies that are sold out
 * @returns the question
 */
export function soldOut(question: MixQuestion, supplyIds: readonly string[]): MixQuestion {
  const offers = question.offers.map((offer) =>
    supplyIds.includes(offer.supplyId) ? { ...offer, mostPacks: 0 } : offer,
  );
  return { ...question, offers };
}
