import type { CartonTerms } from "#lib/cartons/cost/carton-cost";
import type { PackedLoad } from "#lib/cartons/cost/packed-load";
import type { Clearance } from "#lib/cartons/fit/fit-question";
import type { LoadType } from "#lib/cartons/strength/load-type";

/** A parcel that was sent, to be held against another carton. */
export type PastParcel = {
  readonly id: string;
  /** its leading item type */
  readonly itemTypeId: string;
  /** the carton that it went in */
  readonly cartonId: string;
  readonly load: PackedLoad;
  readonly loadType: LoadType;
  readonly clearance: Clearance;
  /** fill, tape and postage as of today, for the zone that it went to */
  readonly terms: CartonTerms;
  /** what it cost then, 1/10,000 minor unit; postage null where none was noted */
  readonly paid: { readonly materialsValue: number; readonly postageValue: number | null };
};

/**
 * What makes two parcels the same question of fit: pieces in their order, and clearance.
 *
 * @param parcel load and clearance
 * @returns a key
 */
export function fitKey({ load, clearance }: Pick<PastParcel, "load" | "clearance">): string {
  return JSON.stringify([load.pieces, clearance]);
}
