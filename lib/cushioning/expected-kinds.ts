import type { PackedPieces } from "#lib/cushioning/way-to-pack";
import { leadingItemType } from "#lib/packing/leading-item-type";

/** Parcels with the same pieces. */
export type KindCount = { readonly pieces: PackedPieces; readonly parcels: number };

/**
 * Parcels to come by what is in them: the pieces expected of each item type go out in the kinds of parcel in which they went
 * out of late. A parcel of several item types goes by the one that leads it; what never went out yet goes one by one.
 *
 * @param sent parcels of late, each kind once
 * @param expectedPieces by item type, from 0
 * @returns kinds with parcels above 0, the most frequent first
 * @see the shares of the kinds stay as they were: common practice, no source
 * @example expectedKinds([{ pieces: [{ itemTypeId: "mug", pieces: 2 }], parcels: 5 }], new Map([["mug", 30]]))
 *   // 15 parcels of two mugs
 */
export function expectedKinds(
  sent: readonly KindCount[],
  expectedPieces: ReadonlyMap<string, number>,
): KindCount[] {
  const sentPieces = new Map<string, number>();
  for (const { pieces, parcels } of sent) {
    for (const { itemTypeId, pieces: each } of pieces) {
      sentPieces.set(itemTypeId, (sentPieces.get(itemTypeId) ?? 0) + each * parcels);
    }
  }
  const known = sent.map(({ pieces, parcels }) => {
    const leading = leadingItemType(pieces);
    const before = sentPieces.get(leading) ?? 0;
    const coming = expectedPieces.get(leading) ?? 0;
    return { pieces, parcels: before > 0 ? (parcels * coming) / before : 0 };
  });
  const isSent = (id: string) => (sentPieces.get(id) ?? 0) > 0;
  const others = [...expectedPieces].flatMap(([itemTypeId, pieces]) =>
    isSent(itemTypeId) ? [] : [{ pieces: [{ itemTypeId, pieces: 1 }], parcels: pieces }],
  );
  return [...known, ...others].filter(({ parcels }) => parcels > 0).sort((a, b) => b.parcels - a.parcels);
}
