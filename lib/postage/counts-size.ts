import type { RateCard } from "#lib/postage/rate-card";

/**
 * Whether a card's prices hang on the size of a parcel: by a rule, by limits or by fees.
 *
 * @param card any
 */
export function countsSize({
  dimensional,
  bands,
  fees,
}: Pick<RateCard, "dimensional" | "bands" | "fees">): boolean {
  return (
    (dimensional !== null && bands.some((band) => band.countsSize)) ||
    bands.some(
      ({ walls }) => walls.longest !== null || walls.lengthAndGirth !== null || walls.sides !== null,
    ) ||
    fees.some(({ when }) => when.kind !== "always")
  );
}
