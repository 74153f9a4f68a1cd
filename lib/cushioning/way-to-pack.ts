import type { CushionStyle } from "#lib/packing/recipe-version";
import type { PackedWeight } from "#lib/packing/weight/packed-weight";
import type { ParcelSize } from "#lib/postage/parcel-size";

/** A parcel by what is in it. */
export type PackedPieces = readonly { readonly itemTypeId: string; readonly pieces: number }[];

/** One way to pack a parcel: a cushion style with all that it takes. */
export type WayToPack = {
  readonly style: CushionStyle;
  /** use units by supply, cartons included */
  readonly takes: ReadonlyMap<string, number>;
  /** from the outside in; none where the card names no carton */
  readonly cartons: readonly string[];
  /** more pieces than the cartons of the card cover: the largest one is taken */
  readonly isOverfull: boolean;
  /** outside sizes that are charged; null where they are not known */
  readonly size: ParcelSize | null;
  /** what the scale may say; null where a part has no mass */
  readonly weight: PackedWeight | null;
  /** wraps, fill, tape and carton by the card, milligrams; what has no mass counts as nothing */
  readonly packingMg: number;
  /** pieces, milligrams; what has no mass counts as nothing */
  readonly contentsMg: number;
  /** ids of item types and supplies without a mass */
  readonly unweighed: readonly string[];
};
