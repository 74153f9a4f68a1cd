import type { MixQuestion } from "#lib/cushioning/purchase/mix-question";

/**
 * The same question with the offers of some supplies dearer: each price rounded to the nearest minor unit, halves up.
 * Thresholds for free delivery and least orders stay, so that a dearer offer may reach them with fewer packs.
 *
 * @param question all of the mix
 * @param supplyIds supplies whose offers get dearer
 * @param share by how much, 0.2 for a fifth
 * @returns the question with the new prices
 * @throws RangeError for a share below 0: a unit left over could then be worth more than a bought one costs
 */
export function dearerOffers(
  question: MixQuestion,
  supplyIds: readonly string[],
  share: number,
): MixQuestion {
  if (!(Number.isFinite(share) && share >= 0)) {
    throw new RangeError(`dearerOffers requires a share of at least 0, got ${share}`);
  }
  const offers = question.offers.map((offer) => {
    if (offer.steps === null || !supplyIds.includes(offer.supplyId)) return offer;
    const steps = offer.steps.map(({ fromPacks, priceMinor }) => {
      return { fromPacks, priceMinor: Math.round(priceMinor * (1 + share)) };
    });
    return { ...offer, steps };
  });
  return { ...question, offers };
}
