import { type PackedWeight, packedWeightUpTo } from "#lib/packing/weight/packed-weight";

/** A step of a postage table: parcels up to this mass. */
export type WeightStep = { readonly label: string; readonly mg: number };

/** Odds of staying within each step, and the lowest one that can be promised; null if none can. */
type WeightBand = {
  readonly steps: readonly (WeightStep & { readonly odds: number })[];
  readonly promise: (WeightStep & { readonly odds: number }) | null;
};

/**
 * The band to promise before packing: the lowest step within which the parcel stays with the wished odds.
 *
 * @param weight what the parcel may weigh
 * @param steps rising masses, milligrams
 * @param wishedOdds 0 to 1, both excluded
 * @returns odds of each step, never falling, and the promise
 * @throws RangeError when the steps do not rise or the odds are out of range
 * @example weightBand(weight, [{ label: "up to 1 kg", mg: 1000000 }], 0.9).promise?.label // "up to 1 kg"
 */
export function weightBand(
  weight: PackedWeight,
  steps: readonly WeightStep[],
  wishedOdds: number,
): WeightBand {
  if (!(wishedOdds > 0 && wishedOdds < 1)) {
    throw new RangeError(`weightBand requires odds between 0 and 1, got ${wishedOdds}`);
  }
  const falling = steps.find(({ mg }, at) => at > 0 && mg <= (steps[at - 1]?.mg ?? 0));
  if (falling !== undefined) {
    throw new RangeError(`weightBand requires rising steps, got ${falling.label} after a heavier one`);
  }
  const withOdds = steps.map((step) => ({ ...step, odds: packedWeightUpTo(weight, step.mg) }));
  return { steps: withOdds, promise: withOdds.find(({ odds }) => odds >= wishedOdds) ?? null };
}
