import type { Block } from "#lib/packing/block";
import { type Calibration, calibration } from "#lib/packing/calibration/calibration";
import { cartonBlank } from "#lib/packing/carton-blank";
import { MICROMETRES_PER_FOOT } from "#lib/units/length";
import { MILLIGRAMS_PER_POUND } from "#lib/units/mass";

/** Double wall is up to twice as heavy as single wall. */
const SPAN = { least: 0.5, most: 2 };
const SQUARE_MICROMETRES_PER_SQUARE_METRE = 1e12;
const MILLIGRAMS_PER_GRAM = 1_000;

/**
 * The weight of board, from one flat carton on the scale.
 *
 * @param carton - inside sizes in micrometres, above zero, and its mass in milligrams, above zero
 * @param replaces - board weight in use so far, in pounds a square foot
 * @returns pounds a square foot, with what it replaces; see `boardGrams` for grams a square metre
 * @throws RangeError if a number is not above zero
 * @see a board maker's blank formula
 * @example weighedCarton(cube12, 435000, 0.115).value // 0.115
 */
export function weighedCarton(carton: Block, massMg: number, replaces: number): Calibration {
  if (!(massMg > 0)) throw new RangeError(`weighedCarton requires a mass above zero, got ${massMg}`);
  const squareFeet = cartonBlank(carton) / MICROMETRES_PER_FOOT ** 2;
  return calibration(massMg / MILLIGRAMS_PER_POUND / squareFeet, replaces, SPAN);
}

/**
 * Board weight in grams a square metre.
 *
 * @param poundsPerSquareFoot - board weight, above zero
 * @returns grams a square metre, not rounded
 * @throws RangeError if the weight is not above zero
 * @example boardGrams(0.115) // 561.5
 */
export function boardGrams(poundsPerSquareFoot: number): number {
  if (!(poundsPerSquareFoot > 0)) {
    throw new RangeError(`boardGrams requires a weight above zero, got ${poundsPerSquareFoot}`);
  }
  const grams = (poundsPerSquareFoot * MILLIGRAMS_PER_POUND) / MILLIGRAMS_PER_GRAM;
  return (grams * SQUARE_MICROMETRES_PER_SQUARE_METRE) / MICROMETRES_PER_FOOT ** 2;
}
