import { amountByMass } from "#lib/packing/amount-by-mass";
import type { Amount } from "#lib/units/amount";

/**
 * Sheets in a pile, from its weight: (gross - wrapper) / mass of one sheet. Also cartons on a scale.
 *
 * @param pile - milligrams on the scale, of the wrapper or tray, and of one use unit
 * @returns the amount, to the nearest 1/12,000 use unit
 * @throws RangeError if the pile weighs less than its wrapper, or a mass is not a whole number of milligrams
 * @see computed from the formula; damp moves paper by a few per cent (from memory)
 * @example pileByWeight({ grossMg: 6350293, wrapperMg: 0, massMg: 27216 }) // 233.3 sheets in 14 lb
 */
export function pileByWeight(pile: {
  readonly grossMg: number;
  readonly wrapperMg: number;
  readonly massMg: number;
}): Amount {
  if (pile.grossMg < pile.wrapperMg) {
    throw new RangeError(
      `pileByWeight requires a pile that weighs at least its wrapper of ${pile.wrapperMg} mg, got ${pile.grossMg}`,
    );
  }
  return amountByMass(pile.grossMg - pile.wrapperMg, pile.massMg);
}
