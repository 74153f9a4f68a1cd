import { amountByMass } from "#lib/packing/amount-by-mass";
import type { Amount } from "#lib/units/amount";

/**
 * What is left on a part roll, from its weight: (gross - core) / mass of one use unit.
 *
 * @param roll - milligrams on the scale, of the empty core, and of one use unit
 * @returns the amount left, to the nearest 1/12,000 use unit
 * @throws RangeError if the roll weighs less than its core, or a mass is not a whole number of milligrams
 * @see computed from the formula; damp moves paper by a few per cent (from memory)
 * @example rollByWeight({ grossMg: 700000, coreMg: 100000, massMg: 4645 }) // 129.2 ft at 50 g/m², 12 in wide
 */
export function rollByWeight(roll: {
  readonly grossMg: number;
  readonly coreMg: number;
  readonly massMg: number;
}): Amount {
  if (roll.grossMg < roll.coreMg) {
    throw new RangeError(
      `rollByWeight requires a roll that weighs at least its core of ${roll.coreMg} mg, got ${roll.grossMg}`,
    );
  }
  return amountByMass(roll.grossMg - roll.coreMg, roll.massMg);
}
