import type { FitEffort } from "#lib/cartons/fit/fit-effort";
import { smallestHeight } from "#lib/cartons/fit/smallest-height";
import { fitKey, type PastParcel } from "#lib/cartons/idle/past-parcel";
import type { Block } from "#lib/packing/block";

/** An inside height, and the item types whose parcels need it; those of lower heights fit it as well. */
export type CutHeight = {
  readonly heightUm: number;
  readonly itemTypeIds: readonly string[];
  readonly parcels: number;
};

/** What heights are asked by. */
type HeightQuestion = {
  readonly inside: Block;
  /** parcels that fit the carton as it is */
  readonly parcels: readonly PastParcel[];
  /** heights are rounded up to whole steps of this, whole micrometres above zero */
  readonly stepUm: number;
  readonly effort: FitEffort;
};

/**
 * To which inside heights a carton could be cut, and for which item types: for each type the height that all its parcels
 * fit, of those that fit the carton as it is.
 *
 * @param question inside, parcels, step and how hard to look
 * @returns heights below the carton's own, lowest first
 * @throws RangeError as `cartonFit`
 * @see smallestHeight
 * @example cutHeights({ inside: cube10, parcels, stepUm: 5000, effort })[0] // { heightUm: 175000, itemTypeIds: ["mug"], parcels: 4 }
 */
export function cutHeights({ inside, parcels, stepUm, effort }: HeightQuestion): readonly CutHeight[] {
  const known = new Map<string, number>();
  const heightOf = ({ load, clearance }: PastParcel): number => {
    const smallest = smallestHeight({ pieces: load.pieces, clearance, base: inside }, effort);
    return smallest.kind === "at-no-height"
      ? inside.heightUm
      : Math.ceil(smallest.heightUm / stepUm) * stepUm;
  };
  const types = new Map<string, { heightUm: number; parcels: number }>();
  for (const parcel of parcels) {
    const key = fitKey(parcel);
    const heightUm = known.get(key) ?? heightOf(parcel);
    known.set(key, heightUm);
    const before = types.get(parcel.itemTypeId) ?? { heightUm: 0, parcels: 0 };
    types.set(parcel.itemTypeId, {
      heightUm: Math.max(before.heightUm, heightUm),
      parcels: before.parcels + 1,
    });
  }
  const below = [...types].filter(([, { heightUm }]) => heightUm < inside.heightUm);
  const heights = [...new Set(below.map(([, { heightUm }]) => heightUm))].toSorted((a, b) => a - b);
  return heights.map((heightUm) => {
    const those = below.filter(([, type]) => type.heightUm === heightUm);
    return {
      heightUm,
      itemTypeIds: those.map(([itemTypeId]) => itemTypeId),
      parcels: those.reduce((sum, [, type]) => sum + type.parcels, 0),
    };
  });
}
