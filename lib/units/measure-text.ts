import type { Measures } from "#lib/units/measures";
import { numberFromText, type Ratio } from "#lib/units/number-text";

/** One number with the unit typed behind it; the unit is lower case, and empty where none was typed. */
type MeasurePart = { readonly value: Ratio; readonly valueText: string; readonly unit: string };

const PART =
  /\s*(\d+[\s-]+\d+\s*[/⁄]\s*\d+|\d+\s*[/⁄]\s*\d+|[\d,]*\s*[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|\d[\d.,]*|[.,]\d+)\s*([^\d½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]*)/y;

/**
 * Splits a typed measure into numbers and units: "2 lb 15 oz" has two parts, "12" one without a unit.
 *
 * @param text - what a person typed
 * @param measures - the shop's measures, for the reading of commas
 * @returns the parts in the order typed, or null if the text is not made of numbers and units
 * @example measureParts("2 ft 3 in", "imperial")?.map((part) => part.unit) // ["ft", "in"]
 */
export function measureParts(text: string, measures: Measures): readonly MeasurePart[] | null {
  const source = text.trim().replace(/([a-z])2(?=\s|$)/gi, "$1²");
  const pattern = new RegExp(PART);
  const parts: MeasurePart[] = [];
  let readTo = 0;
  for (let match = pattern.exec(source); match !== null; match = pattern.exec(source)) {
    const valueText = match[1] ?? "";
    const value = numberFromText(valueText, measures);
    if (value === null) return null;
    parts.push({ value, valueText, unit: unitWord(match[2] ?? "") });
    readTo = pattern.lastIndex;
  }
  return parts.length > 0 && readTo === source.length ? parts : null;
}

function unitWord(text: string): string {
  return text.trim().toLowerCase().replace(/\s+/g, " ").replace(/\.$/, "");
}

/**
 * Adds up the parts of a measure in the smallest unit of a table, exactly.
 *
 * @param parts - numbers with units
 * @param sizes - smallest units in each unit word
 * @param bareUnit - the unit of a lone number without one, or null if a unit is required
 * @returns the exact sum, or null where a unit is not in the table or is missing
 * @example measureSum([{ value: { numerator: 1n, denominator: 2n }, valueText: "1/2", unit: "in" }],
 *   new Map([["in", 25400n]]), null) // { numerator: 25400n, denominator: 2n }
 */
export function measureSum(
  parts: readonly MeasurePart[],
  sizes: ReadonlyMap<string, bigint>,
  bareUnit: string | null,
): Ratio | null {
  let sum: Ratio = { numerator: 0n, denominator: 1n };
  for (const part of parts) {
    const word = part.unit === "" && parts.length === 1 && bareUnit !== null ? bareUnit : part.unit;
    const size = sizes.get(word);
    if (size === undefined) return null;
    sum = {
      numerator: sum.numerator * part.value.denominator + part.value.numerator * size * sum.denominator,
      denominator: sum.denominator * part.value.denominator,
    };
  }
  return sum;
}
