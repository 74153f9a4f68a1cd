import type { PastParcel } from "#lib/cartons/idle/past-parcel";

/** An item type, and how many of its parcels could have gone in a carton. */
export type SuitedType = {
  readonly itemTypeId: string;
  readonly parcels: number;
  readonly fitting: number;
  /** 0 to 1 */
  readonly share: number;
};

/**
 * Which item types suit a carton, by the share of their parcels that could have gone in it.
 *
 * @param parcels those that went in other cartons
 * @param fittingIds of the parcels that could have gone in it
 * @returns types of which at least one could: largest share first, then most parcels
 * @example suitedTypes(parcels, new Set(["p1"]))[0] // { itemTypeId: "mug", parcels: 2, fitting: 1, share: 0.5 }
 */
export function suitedTypes(
  parcels: readonly Pick<PastParcel, "id" | "itemTypeId">[],
  fittingIds: ReadonlySet<string>,
): readonly SuitedType[] {
  const counts = new Map<string, { parcels: number; fitting: number }>();
  for (const { id, itemTypeId } of parcels) {
    const before = counts.get(itemTypeId) ?? { parcels: 0, fitting: 0 };
    const fitting = before.fitting + Number(fittingIds.has(id));
    counts.set(itemTypeId, { parcels: before.parcels + 1, fitting });
  }
  return [...counts]
    .map(([itemTypeId, count]) => ({ itemTypeId, ...count, share: count.fitting / count.parcels }))
    .filter(({ fitting }) => fitting > 0)
    .toSorted((a, b) => b.share - a.share || b.fitting - a.fitting);
}
