/**
 * The item type that a parcel counts under: most pieces, the first by id among equals.
 *
 * @param pieces item types of the parcel, in any order
 * @returns the id; empty text for a parcel of nothing
 * @example leadingItemType([{ itemTypeId: "mug", pieces: 2 }, { itemTypeId: "bowl", pieces: 2 }]) // "bowl"
 */
export function leadingItemType(
  pieces: readonly { readonly itemTypeId: string; readonly pieces: number }[],
): string {
  const ordered = [...pieces].sort((a, b) => b.pieces - a.pieces || (a.itemTypeId < b.itemTypeId ? -1 : 1));
  return ordered[0]?.itemTypeId ?? "";
}
