import type { LikelyChoice } from "./packing-choices";

/** A recent parcel of one item type, as far as the likely choice needs it. */
export type RecentParcel = LikelyChoice & { readonly unusual: boolean };

/**
 * What is likely for each item type: the number of pieces used most often of late, and style, carton and zone of
 * the last parcel with so many. Unusual parcels say nothing.
 * @param parcels recent parcels, newest first
 * @returns one choice for each item type that was packed
 */
export function likelyChoices(parcels: readonly RecentParcel[]): readonly LikelyChoice[] {
  const usual = parcels.filter((parcel) => !parcel.unusual);
  const typeIds = [...new Set(usual.map((parcel) => parcel.itemTypeId))];
  return typeIds.flatMap((itemTypeId) => {
    const ofType = usual.filter((parcel) => parcel.itemTypeId === itemTypeId);
    const pieces = mostFrequent(ofType.map((parcel) => parcel.pieces));
    const last = ofType.find((parcel) => parcel.pieces === pieces);
    if (last === undefined) return [];
    const { unusual: _unusual, ...choice } = last;
    return [choice];
  });
}

/** The number met most often; among equals the one met first. */
function mostFrequent(numbers: readonly number[]): number | undefined {
  const counts = new Map<number, number>();
  for (const number of numbers) counts.set(number, (counts.get(number) ?? 0) + 1);
  const most = Math.max(...counts.values());
  return numbers.find((number) => counts.get(number) === most);
}
