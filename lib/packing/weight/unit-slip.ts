import { MILLIGRAMS_PER_GRAM, MILLIGRAMS_PER_POUND } from "#lib/units/mass";

/** A unit on a scale's display. */
export type MassUnit = "g" | "kg" | "oz" | "lb";

/** A reading that fits in another unit: what was typed, what was meant, and what it weighs then. */
export type UnitSlip = { readonly typed: MassUnit; readonly meant: MassUnit; readonly mg: number };

const MILLIGRAMS: Readonly<Record<MassUnit, number>> = {
  g: MILLIGRAMS_PER_GRAM,
  kg: 1000 * MILLIGRAMS_PER_GRAM,
  oz: MILLIGRAMS_PER_POUND / 16,
  lb: MILLIGRAMS_PER_POUND,
};
const UNITS = Object.keys(MILLIGRAMS) as readonly MassUnit[];

/** The closest two units are 2.2 apart: what is off by less than this was not typed in the wrong one. A guess. */
const NO_SLIP_WITHIN = Math.log(1.6);
/** In the unit that was meant a reading must come this many times closer, on the scale of ratios. A guess. */
const CLOSER = 4;

/**
 * The unit in which a reading would fit: 23 lb, where 1.4 lb were expected, are 23 oz. Ratios near 16, 28.35, 35.27,
 * 453.6, 1000 and 2.2046 or their inverses are found; others are not a slip.
 *
 * @param reading milligrams, and the unit in which it was typed, or null if that was not kept
 * @param expectedMg milligrams that the parcel should weigh, above 0
 * @returns the slip, or null
 * @throws RangeError when a mass is not above 0
 * @see common practice, no source; units by the international agreement of 1959
 * @example unitSlip({ mg: 10432625, unit: "lb" }, 650000)?.meant // "oz"
 */
export function unitSlip(
  reading: { readonly mg: number; readonly unit: MassUnit | null },
  expectedMg: number,
): UnitSlip | null {
  if (!(reading.mg > 0 && expectedMg > 0)) {
    throw new RangeError(`unitSlip requires masses above 0, got ${reading.mg} and ${expectedMg}`);
  }
  const miss = (mg: number): number => Math.abs(Math.log(mg / expectedMg));
  const own = miss(reading.mg);
  if (own < NO_SLIP_WITHIN) return null;
  const typedUnits = reading.unit === null ? UNITS : [reading.unit];
  const slips = typedUnits.flatMap((typed) =>
    UNITS.filter((meant) => meant !== typed).map(
      (meant): UnitSlip => ({ typed, meant, mg: (reading.mg * MILLIGRAMS[meant]) / MILLIGRAMS[typed] }),
    ),
  );
  const best = slips.reduce((least, slip) => (miss(slip.mg) < miss(least.mg) ? slip : least));
  return miss(best.mg) * CLOSER <= own ? best : null;
}
