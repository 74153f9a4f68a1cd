import type { PackedPieces } from "#lib/cushioning/way-to-pack";

/**
 * A parcel by what is in it.
 *
 * @param pieces of the parcel
 * @param nameOf an item type's name
 * @returns "Stoneware mug", "2 × Stoneware mug", "Bowl and 2 × Mug"
 */
export function kindName(pieces: PackedPieces, nameOf: (itemTypeId: string) => string): string {
  const parts = pieces.map(({ itemTypeId, pieces: count }) =>
    count === 1 ? nameOf(itemTypeId) : `${count} × ${nameOf(itemTypeId)}`,
  );
  const last = parts.at(-1) ?? "";
  return parts.length < 2 ? last : `${parts.slice(0, -1).join(", ")} and ${last}`;
}
