import type { CushionStyle } from "#lib/packing/recipe-version";
import type { Day } from "#lib/units/day";

/** Parcels that should weigh alike: leading item type, carton (null for none from stock) and cushion style. */
export type WeightGroup = {
  readonly itemTypeId: string;
  readonly cartonId: string | null;
  readonly style: CushionStyle;
};

/** A past parcel: what the bill of that day said that it should weigh, and what the scale said. */
export type PastParcel = WeightGroup & {
  readonly packedOn: Day;
  /** milligrams, by the recipe and the masses as they were then */
  readonly predictedMg: number;
  /** milligrams; null if never weighed */
  readonly scaleMg: number | null;
  /** kept out of averages by the seller */
  readonly unusual: boolean;
};

/** A past parcel that can be learned from. */
export type WeighedParcel = PastParcel & { readonly scaleMg: number };

/**
 * The parcels that say something about weights: weighed, usual, with a bill that has a mass.
 *
 * @param parcels past parcels in any order
 * @returns those, oldest first; the order of one day is kept
 * @example weighedParcels([{ ...mug, scaleMg: null }]) // []
 */
export function weighedParcels(parcels: readonly PastParcel[]): WeighedParcel[] {
  return parcels
    .flatMap((parcel) => {
      const { scaleMg } = parcel;
      const counts = scaleMg !== null && scaleMg > 0 && parcel.predictedMg > 0 && !parcel.unusual;
      return counts ? [{ ...parcel, scaleMg }] : [];
    })
    .sort((a, b) => Number(a.packedOn > b.packedOn) - Number(a.packedOn < b.packedOn));
}

/**
 * One text for a group, as a key.
 *
 * @param group item type, carton, style
 * @example weightGroupKey({ itemTypeId: "mug", cartonId: null, style: "paper" }) // '["mug",null,"paper"]'
 */
export function weightGroupKey({ itemTypeId, cartonId, style }: WeightGroup): string {
  return JSON.stringify([itemTypeId, cartonId, style]);
}
