import { nanogramsPer } from "#lib/postage/exact-mass";
import { type Milligrams, milligrams } from "#lib/units/mass";
import { nearestInteger } from "#lib/units/nearest-integer";

const NANOGRAMS_PER_MILLIGRAM = 1_000_000n;

/**
 * Whole pounds or kilograms as they are stored, so that what was typed as 21 lb is neither under nor over 21 lb.
 *
 * @param count whole number from zero
 * @param unit pounds or kilograms
 * @returns the nearest milligram
 * @throws RangeError if the count is not a whole number from zero
 * @example storedMass(21, "lb") // 9525440
 */
export function storedMass(count: number, unit: "lb" | "kg"): Milligrams {
  if (!(Number.isSafeInteger(count) && count >= 0)) {
    throw new RangeError(`storedMass requires a whole number from zero, got ${count}`);
  }
  return milligrams(nearestInteger(BigInt(count) * nanogramsPer(unit), NANOGRAMS_PER_MILLIGRAM));
}
