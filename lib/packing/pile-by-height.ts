import { AMOUNT_PER_UNIT, type Amount, amount } from "#lib/units/amount";
import { nearestInteger } from "#lib/units/nearest-integer";

const NANOMETRES_PER_MICROMETRE = 1_000n;

/**
 * Sheets in a pressed pile, from its height: height / height per sheet. Press the pile flat first.
 *
 * @param pile - height in whole micrometres; height per sheet in whole nanometres, above zero (1.5 in for a ream of
 *   500 is 76,200)
 * @returns the amount, to the nearest 1/12,000 sheet
 * @throws RangeError if a height is not as said
 * @see a home mover's measured ream of 500 newsprint sheets, 1.5 in (2014), one person's reading; the rest is
 *   computed from the formula
 * @example pileByHeight({ heightUm: 22860, sheetNm: 76200 }) // 300 sheets in 0.9 in
 */
export function pileByHeight(pile: { readonly heightUm: number; readonly sheetNm: number }): Amount {
  if (!Number.isSafeInteger(pile.heightUm) || pile.heightUm < 0) {
    throw new RangeError(`pileByHeight requires whole micrometres from zero, got ${pile.heightUm}`);
  }
  if (!Number.isSafeInteger(pile.sheetNm) || pile.sheetNm <= 0) {
    throw new RangeError(`pileByHeight requires whole nanometres a sheet above zero, got ${pile.sheetNm}`);
  }
  const parts = BigInt(pile.heightUm) * NANOMETRES_PER_MICROMETRE * BigInt(AMOUNT_PER_UNIT);
  return amount(nearestInteger(parts, BigInt(pile.sheetNm)));
}
