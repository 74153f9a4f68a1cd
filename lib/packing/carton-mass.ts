import { cartonBlank } from "#lib/packing/carton-blank";
import { MICROMETRES_PER_FOOT } from "#lib/units/length";
import { MILLIGRAMS_PER_POUND, type Milligrams, milligrams } from "#lib/units/mass";

/** Single wall board, from memory; weigh one carton once and overwrite. */
const SINGLE_WALL_POUNDS_PER_SQUARE_FOOT = 0.115;

/**
 * A guess of the mass of a slotted carton, from its blank: (2 L + 2 W + 2 in) x (W + H) x board weight.
 *
 * @param sizes - length, width and height in micrometres, above zero
 * @param poundsPerSquareFoot - board weight, above zero
 * @returns the nearest milligram
 * @throws RangeError if a number is not above zero
 * @see a board maker's blank formula; the board weight is from memory, so the answer is a guess
 * @example cartonMass({ lengthUm: 203200, widthUm: 203200, heightUm: 203200 }) // 197061, about 197 g
 */
export function cartonMass(
  sizes: { readonly lengthUm: number; readonly widthUm: number; readonly heightUm: number },
  poundsPerSquareFoot: number = SINGLE_WALL_POUNDS_PER_SQUARE_FOOT,
): Milligrams {
  if (!(poundsPerSquareFoot > 0)) {
    throw new RangeError(`cartonMass requires a board weight above zero, got ${poundsPerSquareFoot}`);
  }
  const squareFeet = cartonBlank(sizes) / MICROMETRES_PER_FOOT ** 2;
  return milligrams(Math.round(squareFeet * poundsPerSquareFoot * MILLIGRAMS_PER_POUND));
}
