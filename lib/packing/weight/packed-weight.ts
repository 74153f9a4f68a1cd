import { beliefAt, type KnownWeights } from "#lib/packing/weight/known-weights";
import { type WeightGroup, weightGroupKey } from "#lib/packing/weight/weighed-parcel";
import { type MixturePart, mixtureMoments, mixtureQuantile, mixtureUpTo } from "#lib/statistics/mixture";
import { normalQuantile } from "#lib/statistics/normal-quantile";
import { type Milligrams, milligrams } from "#lib/units/mass";

/** What the next parcel may weigh on the scale. */
export type PackedWeight = {
  /** milligrams by the bill */
  readonly predictedMg: number;
  /** as likely more as less */
  readonly likelyMg: Milligrams;
  readonly meanMg: Milligrams;
  /** standard deviation */
  readonly deviationMg: number;
  /** weighed parcels that it rests on: of the group, or of the item type where those of the group are too few */
  readonly parcels: number;
  readonly basis: "group" | "item-type" | "guess";
  /** fewer than 5 parcels: the margin is a formula's */
  readonly guess: boolean;
  /** the distribution, milligrams */
  readonly parts: readonly MixturePart[];
};

/** With fewer parcels the margin is a guess: a tenth of the weight and at least 50 g hold nine times in ten. */
export const ENOUGH_PARCELS = 5;
const GUESSED_SHARE = 0.1;
const GUESSED_LEAST_MG = 50_000;
const GUESSED_CHANCE = 0.9;
/** Half of the last stored milligram: 5 oz, stored as 141,748 mg, is not over 5 oz. */
const STORED_HALF = 0.5;

/**
 * What the next parcel may weigh: bill and learned correction, with the errors that were seen and with what is unsure
 * about the correction while parcels are few.
 *
 * @param known of `learnedWeights`
 * @param next item type, carton, style, and milligrams by the bill, above 0
 * @returns the distribution, and what it rests on
 * @throws RangeError when the bill has no mass
 * @see the guess for fewer than 5 parcels is common practice, no source
 * @example packedWeight(learnedWeights([], today).known, { ...mug, predictedMg: 937000 }).guess // true
 */
export function packedWeight(
  known: KnownWeights,
  next: WeightGroup & { readonly predictedMg: number },
): PackedWeight {
  const { predictedMg } = next;
  if (!(predictedMg > 0 && Number.isFinite(predictedMg))) {
    throw new RangeError(`packedWeight requires a bill with a mass above 0, got ${predictedMg}`);
  }
  const { mean, variance, noise } = beliefAt(known, next);
  const errors = known.shape.map(({ weight, centre, scale, degrees }) => ({
    weight,
    centre: predictedMg * (1 + mean + noise * centre),
    scale: predictedMg * Math.hypot(noise * scale, Math.sqrt(variance)),
    degrees,
  }));
  const basis = basisOf(known, next);
  const parts = basis.basis === "guess" ? guessedParts(errors, known.shop.parcels > 0) : errors;
  const moments = mixtureMoments(parts);
  return {
    predictedMg,
    likelyMg: massOf(mixtureQuantile(parts, 1 / 2)),
    meanMg: massOf(moments.mean),
    deviationMg: Math.sqrt(moments.variance),
    ...basis,
    guess: basis.basis === "guess",
    parts,
  };
}

/**
 * The weight that is not exceeded with a chance.
 *
 * @param weight of `packedWeight`
 * @param chance between 0 and 1, both excluded
 * @returns the nearest milligram
 * @throws RangeError when the chance is out of range
 * @example packedWeightQuantile(weight, 0.9) // 95 g above the bill for a guess of 950 g
 */
export function packedWeightQuantile(weight: PackedWeight, chance: number): Milligrams {
  return massOf(mixtureQuantile(weight.parts, chance));
}

/**
 * Chance that the parcel does not weigh more than a limit.
 *
 * @param weight of `packedWeight`
 * @param mg limit, milligrams
 * @returns 0 to 1, never falling with the limit
 * @example packedWeightUpTo(weight, weight.likelyMg) // 0.5
 */
export function packedWeightUpTo(weight: PackedWeight, mg: number): number {
  return mixtureUpTo(weight.parts, mg + STORED_HALF);
}

function basisOf(known: KnownWeights, next: WeightGroup): Pick<PackedWeight, "parcels" | "basis"> {
  const group = known.groups[weightGroupKey(next)]?.parcels ?? 0;
  if (group >= ENOUGH_PARCELS) return { parcels: group, basis: "group" };
  const type = known.types[next.itemTypeId]?.parcels ?? 0;
  return { parcels: type, basis: type >= ENOUGH_PARCELS ? "item-type" : "guess" };
}

/** A normal distribution about the likely weight, as wide as the formula says, or wider where the shop's parcels say so. */
function guessedParts(errors: readonly MixturePart[], hasParcels: boolean): readonly MixturePart[] {
  const likely = mixtureQuantile(errors, 1 / 2);
  const seen = hasParcels ? mixtureQuantile(errors, GUESSED_CHANCE) - likely : 0;
  const margin = Math.max(seen, GUESSED_SHARE * likely, GUESSED_LEAST_MG);
  return [{ weight: 1, centre: likely, scale: margin / normalQuantile(GUESSED_CHANCE), degrees: null }];
}

function massOf(mg: number): Milligrams {
  return milligrams(Math.max(0, Math.round(mg)));
}
