import {
  type LengthUnit,
  type MassUnit,
  type TypedLength,
  type TypedMass,
  type TypedMeasure,
  typedMeasure,
} from "#lib/postage/typed-measure";
import type { Measures } from "#lib/units/measures";

const MASS_UNITS: ReadonlyMap<string, MassUnit> = new Map([
  ["oz", "oz"],
  ["ounce", "oz"],
  ["ounces", "oz"],
  ["lb", "lb"],
  ["lbs", "lb"],
  ["pound", "lb"],
  ["pounds", "lb"],
  ["g", "g"],
  ["gram", "g"],
  ["grams", "g"],
  ["kg", "kg"],
  ["kilo", "kg"],
  ["kilos", "kg"],
]);
const LENGTH_UNITS: ReadonlyMap<string, LengthUnit> = new Map([
  ["in", "in"],
  ["inch", "in"],
  ["inches", "in"],
  ["cm", "cm"],
  ["mm", "mm"],
]);

/**
 * Reads a weight of a rate card; its unit must stand there.
 *
 * @param text what a person typed
 * @param measures whose decimal comma
 * @returns null if it can't be read
 * @example massFromText("15.999 oz", "imperial")?.unit // "oz"
 */
export function massFromText(text: string, measures: Measures): TypedMass | null {
  return measureFromText(text, MASS_UNITS, measures);
}

/**
 * Reads a length of a rate card; its unit must stand there.
 *
 * @param text what a person typed
 * @param measures whose decimal comma
 * @returns null if it can't be read
 * @example lengthFromText("22 in", "imperial")?.text // "22"
 */
export function lengthFromText(text: string, measures: Measures): TypedLength | null {
  return measureFromText(text, LENGTH_UNITS, measures);
}

/**
 * The unit of weight that a word names.
 *
 * @param word in any case
 * @returns null for any other word
 */
export function massUnitOf(word: string): MassUnit | null {
  return MASS_UNITS.get(word.toLowerCase()) ?? null;
}

/**
 * The unit of length that a word names.
 *
 * @param word in any case
 * @returns null for any other word
 */
export function lengthUnitOf(word: string): LengthUnit | null {
  return LENGTH_UNITS.get(word.toLowerCase()) ?? null;
}

function measureFromText<Unit extends string>(
  text: string,
  units: ReadonlyMap<string, Unit>,
  measures: Measures,
): TypedMeasure<Unit> | null {
  const match = /^(.*?)\s*([a-z]+)\.?$/i.exec(text.trim());
  const unit = units.get((match?.[2] ?? "").toLowerCase());
  return match === null || unit === undefined ? null : typedMeasure(match[1] ?? "", unit, measures);
}
