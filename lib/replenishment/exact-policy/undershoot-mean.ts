/**
 * Mean undershoot: how far below the reorder point the position already is, on average, when it is found there. Uses
 * come in batches and the shop looks once a review, so that an order goes out late by about half a batch and more.
 *
 * E[D²] / (2 E[D]); for whole units, ordering at or under the point, E[D (D - 1)] / (2 E[D])
 *
 * @param use between two reviews: mean, above 0, standard deviation, and whether it is counted in whole units
 * @returns in the unit of the mean; for lots that are large beside the use of a review
 * @throws RangeError when the mean is not above 0 or the deviation below 0
 * @see Silver, Pyke and Thomas (2017), Inventory and Production Management in Supply Chains, chapter 7; renewal theory
 * (from memory); computed values in tests/reference
 * @example undershootMean({ mean: 10, deviation: 6, whole: false }) // 6.8
 */
export function undershootMean(use: {
  readonly mean: number;
  readonly deviation: number;
  readonly whole: boolean;
}): number {
  const { mean, deviation, whole } = use;
  if (!(mean > 0 && deviation >= 0)) {
    throw new RangeError(
      `undershootMean requires a mean above 0 and a deviation from 0, got ${mean} and ${deviation}`,
    );
  }
  const batch = (deviation ** 2 + mean ** 2) / (2 * mean);
  return whole ? batch - 0.5 : batch;
}
