import { AMOUNT_PER_UNIT, type Amount, amount } from "#lib/units/amount";
import { nearestInteger } from "#lib/units/nearest-integer";

/**
 * The amount that weighs so much.
 *
 * @param netMg - whole milligrams without core or wrapper, zero or more
 * @param massMg - whole milligrams of one use unit, above zero
 * @returns the amount, to the nearest 1/12,000 use unit
 * @throws RangeError if a mass is not as said
 * @example amountByMass(54432, 27216) // 24000
 */
export function amountByMass(netMg: number, massMg: number): Amount {
  if (!Number.isSafeInteger(netMg) || netMg < 0) {
    throw new RangeError(`amountByMass requires whole milligrams from zero, got ${netMg}`);
  }
  if (!Number.isSafeInteger(massMg) || massMg <= 0) {
    throw new RangeError(`amountByMass requires a use unit of whole milligrams above zero, got ${massMg}`);
  }
  return amount(nearestInteger(BigInt(netMg) * BigInt(AMOUNT_PER_UNIT), BigInt(massMg)));
}
