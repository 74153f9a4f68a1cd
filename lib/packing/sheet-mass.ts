import { MICROMETRES_PER_INCH } from "#lib/units/length";
import { MILLIGRAMS_PER_GRAM, MILLIGRAMS_PER_POUND, type Milligrams, milligrams } from "#lib/units/mass";

/** Sheets in the ream that a basis weight speaks of. */
const SHEETS_PER_REAM = 500;
const SQUARE_MICROMETRES_PER_SQUARE_METRE = 1e12;
/** Basic size of packing papers, newsprint and kraft, in inches. */
const PACKING_PAPER_BASIC_SIZE: readonly [number, number] = [24, 36];

/**
 * Grammage from a basis weight: pounds a ream of 500 sheets of the basic size.
 *
 * @param basisPounds - basis weight in pounds, above zero
 * @param basicSizeInches - the two sides of the basic size in inches; packing papers go by 24 x 36
 * @returns grams a square metre, not rounded
 * @throws RangeError if a number is not above zero
 * @see paper maker's formula, shop.sylvamo.com/en/resources/calculator/basisweight
 * @example gramsPerSquareMetre(30) // 48.82
 */
export function gramsPerSquareMetre(
  basisPounds: number,
  basicSizeInches: readonly [number, number] = PACKING_PAPER_BASIC_SIZE,
): number {
  const [width, length] = basicSizeInches;
  refuseUnlessPositive("gramsPerSquareMetre", [basisPounds, width, length]);
  const squareMetres = areaOf(width * MICROMETRES_PER_INCH, length * MICROMETRES_PER_INCH) * SHEETS_PER_REAM;
  return (basisPounds * MILLIGRAMS_PER_POUND) / MILLIGRAMS_PER_GRAM / squareMetres;
}

/**
 * The mass of one sheet: area x grammage.
 *
 * @param sheet - sides in micrometres and grams a square metre, all above zero
 * @returns the nearest milligram
 * @throws RangeError if a number is not above zero
 * @see paper converter's sheet formula, paperconverter.com/7783.html
 * @example sheetMass({ lengthUm: 914400, widthUm: 609600, gramsPerSquareMetre: 48.8243 }) // 27216
 */
export function sheetMass(sheet: {
  readonly lengthUm: number;
  readonly widthUm: number;
  readonly gramsPerSquareMetre: number;
}): Milligrams {
  refuseUnlessPositive("sheetMass", [sheet.lengthUm, sheet.widthUm, sheet.gramsPerSquareMetre]);
  const grams = areaOf(sheet.lengthUm, sheet.widthUm) * sheet.gramsPerSquareMetre;
  return milligrams(Math.round(grams * MILLIGRAMS_PER_GRAM));
}

function areaOf(lengthUm: number, widthUm: number): number {
  return (lengthUm * widthUm) / SQUARE_MICROMETRES_PER_SQUARE_METRE;
}

function refuseUnlessPositive(caller: string, numbers: readonly number[]): void {
  const wrong = numbers.find((each) => !(each > 0 && Number.isFinite(each)));
  if (wrong !== undefined) throw new RangeError(`${caller} requires numbers above zero, got ${wrong}`);
}
