import type { Measures } from "#lib/units/measures";
import { numberFromText, type Ratio } from "#lib/units/number-text";

/** Units in which a rate card may give its weights. */
export type MassUnit = "oz" | "lb" | "g" | "kg";

/** Units in which a rate card may give its sizes. */
export type LengthUnit = "in" | "cm" | "mm";

/** A number with its unit exactly as a list or a person gave it: 15.999 oz stays 15.999 oz. */
export type TypedMeasure<Unit extends string> = {
  readonly text: string;
  readonly unit: Unit;
  readonly value: Ratio;
};

export type TypedMass = TypedMeasure<MassUnit>;
export type TypedLength = TypedMeasure<LengthUnit>;

/**
 * Reads the number of a measure whose unit was chosen beside it.
 *
 * @param text - what a person typed: "15.999", "4 1/2", "0,5"
 * @param unit - the unit chosen
 * @param measures - the shop's measures, for the reading of commas
 * @returns the exact value with its text and unit, or null if the number cannot be read
 * @example typedMeasure("15.999", "oz", "imperial")?.value // { numerator: 15999n, denominator: 1000n }
 */
export function typedMeasure<Unit extends string>(
  text: string,
  unit: Unit,
  measures: Measures,
): TypedMeasure<Unit> | null {
  const value = numberFromText(text, measures);
  return value === null ? null : { text: text.trim(), unit, value };
}

/**
 * A measure as it was typed.
 *
 * @param measure - any
 * @returns number and unit
 * @example measureWords({ text: "15.999", unit: "oz", value }) // "15.999 oz"
 */
export function measureWords({ text, unit }: TypedMeasure<string>): string {
  return `${text} ${unit}`;
}
