import { errorShape } from "#lib/packing/weight/error-shape";
import { type WeighedParcel, type WeightGroup, weightGroupKey } from "#lib/packing/weight/weighed-parcel";
import { extraOf, noiseAt, USUAL_BILL_MG, type WeightFit } from "#lib/packing/weight/weight-fit";
import type { MixturePart } from "#lib/statistics/mixture";

/** What is believed of a group's parcels, in numbers that can be sent; all as shares of the bill. */
type WeightBelief = {
  /** mean error: the first and `extraOf` times the second */
  readonly mean: readonly [level: number, slope: number];
  /** variance of that mean, by the powers of `extraOf` */
  readonly variance: readonly [constant: number, linear: number, square: number];
  /** scale of the errors at a bill of 1 kg */
  readonly noise: number;
  /** parcels learned from */
  readonly parcels: number;
};

/** What is known of a shop's weights as plain numbers: a bench that has lost its connection goes on with it. */
export type KnownWeights = {
  /** shape of the errors, in scales of a group */
  readonly shape: readonly MixturePart[];
  /** by group key */
  readonly groups: Readonly<Record<string, WeightBelief>>;
  /** by item type, for a group never met */
  readonly types: Readonly<Record<string, WeightBelief>>;
  /** for an item type never met */
  readonly shop: WeightBelief;
};

/** No parcel has such a key. */
const NEVER_MET = "";

/**
 * What a fit says of each group, type and the shop.
 *
 * @param fit of `weightFit`
 * @param parcels what it was learned from
 * @returns the same as plain numbers: the fit's mean is linear and its variance quadratic in `extraOf`, so three places
 * tell all of them
 * @example knownWeights(weightFit([], []), []).shop.parcels // 0
 */
export function knownWeights(fit: WeightFit, parcels: readonly WeighedParcel[]): KnownWeights {
  const believed = (typeKey: string, groupKey: string, own: number): WeightBelief => {
    const at = (extra: number) => fit.means.of({ typeKey, groupKey, extra });
    const [none, one, two] = [at(0), at(1), at(2)];
    const square = (two.variance - 2 * one.variance + none.variance) / 2;
    return {
      mean: [none.mean, one.mean - none.mean],
      variance: [none.variance, one.variance - none.variance - square, square],
      noise: fit.noiseOf(groupKey, USUAL_BILL_MG),
      parcels: own,
    };
  };
  const groups: Record<string, WeightBelief> = {};
  const types: Record<string, WeightBelief> = {};
  for (const [groupKey, { typeKey, count }] of tally(parcels, weightGroupKey)) {
    groups[groupKey] = believed(typeKey, groupKey, count);
  }
  for (const [typeKey, { count }] of tally(parcels, ({ itemTypeId }) => itemTypeId)) {
    types[typeKey] = believed(typeKey, NEVER_MET, count);
  }
  return {
    shape: errorShape(fit.errors, fit.degrees),
    groups,
    types,
    shop: believed(NEVER_MET, NEVER_MET, parcels.length),
  };
}

/**
 * What is believed of the errors of one parcel.
 *
 * @param known of `knownWeights`
 * @param next item type, carton, style, and milligrams by the bill, above 0
 * @returns mean and its variance, and the scale of the errors, as shares of the bill
 * @example beliefAt(known, { ...mug, predictedMg: 937000 }).mean // 0.02: two in a hundred heavier
 */
export function beliefAt(
  known: KnownWeights,
  next: WeightGroup & { readonly predictedMg: number },
): { readonly mean: number; readonly variance: number; readonly noise: number } {
  const belief = known.groups[weightGroupKey(next)] ?? known.types[next.itemTypeId] ?? known.shop;
  const extra = extraOf(next.predictedMg);
  const [level, slope] = belief.mean;
  const [constant, linear, square] = belief.variance;
  return {
    mean: level + slope * extra,
    variance: Math.max(0, constant + linear * extra + square * extra * extra),
    noise: noiseAt(belief.noise, next.predictedMg),
  };
}

type Tally = ReadonlyMap<string, { readonly typeKey: string; readonly count: number }>;

function tally(parcels: readonly WeighedParcel[], keyOf: (parcel: WeighedParcel) => string): Tally {
  const counts = new Map<string, { typeKey: string; count: number }>();
  for (const parcel of parcels) {
    const key = keyOf(parcel);
    const known = counts.get(key);
    if (known === undefined) counts.set(key, { typeKey: parcel.itemTypeId, count: 1 });
    else known.count += 1;
  }
  return counts;
}
