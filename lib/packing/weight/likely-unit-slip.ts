import { type PackedWeight, packedWeightQuantile } from "#lib/packing/weight/packed-weight";
import { type MassUnit, type UnitSlip, unitSlip } from "#lib/packing/weight/unit-slip";

/** What lies outside of 999 in 1000 parcels is asked about. */
const RARE = 0.0005;

/**
 * Whether a reading that is being typed is likely in the wrong unit: far outside of what this parcel may weigh, and close
 * to it in another unit. A question for the screen, never a refusal.
 *
 * @param reading milligrams above 0, and the unit it was typed in, null if unknown
 * @param prediction what the parcel may weigh
 * @returns the unit that would fit, or null
 * @throws RangeError when the reading is not above 0
 * @example likelyUnitSlip({ mg: 23 * 453592.37, unit: "lb" }, weight)?.meant // "oz", where 23 oz are likely
 */
export function likelyUnitSlip(
  reading: { readonly mg: number; readonly unit: MassUnit | null },
  prediction: PackedWeight,
): UnitSlip | null {
  const isUsual =
    reading.mg >= packedWeightQuantile(prediction, RARE) &&
    reading.mg <= packedWeightQuantile(prediction, 1 - RARE);
  if (isUsual) return null;
  return unitSlip(reading, Math.max(1, prediction.likelyMg));
}
