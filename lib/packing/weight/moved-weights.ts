import { mistypedParcels } from "#lib/packing/weight/mistyped-parcels";
import {
  type PastParcel,
  type WeighedParcel,
  type WeightGroup,
  weighedParcels,
  weightGroupKey,
} from "#lib/packing/weight/weighed-parcel";
import { type WeightDrift, weightDrift } from "#lib/packing/weight/weight-drift";

/** A group of parcels that weigh otherwise than their bills since a day. */
export type MovedWeight = WeightGroup & { readonly drift: WeightDrift };

/** Groups that moved, and how many readings were left out as likely typed in the wrong unit. */
export type MovedWeights = { readonly moved: readonly MovedWeight[]; readonly aside: number };

/**
 * Which parcels weigh more or less than the card says, group by group, since when.
 *
 * @param parcels past parcels in any order
 * @returns the groups, those farthest off first
 * @example movedWeights([]).moved // []
 */
export function movedWeights(parcels: readonly PastParcel[]): MovedWeights {
  const { kept, aside } = mistypedParcels(weighedParcels(parcels));
  const groups = new Map<string, WeighedParcel[]>();
  for (const parcel of kept) {
    const key = weightGroupKey(parcel);
    const own = groups.get(key);
    if (own === undefined) groups.set(key, [parcel]);
    else own.push(parcel);
  }
  const moved = [...groups.values()].flatMap((own): MovedWeight[] => {
    const [first] = own;
    const drift = weightDrift(own);
    if (first === undefined || drift === null) return [];
    const { itemTypeId, cartonId, style } = first;
    return [{ itemTypeId, cartonId, style, drift }];
  });
  return {
    moved: moved.sort((a, b) => Math.abs(b.drift.share) - Math.abs(a.drift.share)),
    aside: aside.length,
  };
}
