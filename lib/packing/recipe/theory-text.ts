import { MICROMETRES_PER_INCH } from "#lib/units/length";
import type { Measures } from "#lib/units/measures";

const MICROMETRES_PER_CENTIMETRE = 10_000;
const MILLILITRES_PER_CUBIC_INCH = 16.387_064;
const ML_PER_LITRE = 1_000;

/**
 * A reckoned length, to a tenth: what is used is rounded up from it.
 *
 * @param um - micrometres
 * @param measures - the shop's measures
 * @returns "32.6 in" or "82.9 cm"; thin layers to a hundredth
 * @example lengthInTheory(828804, "imperial") // "32.6 in"
 */
export function lengthInTheory(um: number, measures: Measures): string {
  const value = um / (measures === "imperial" ? MICROMETRES_PER_INCH : MICROMETRES_PER_CENTIMETRE);
  return `${Number(value.toFixed(value < 1 ? 2 : 1))} ${measures === "imperial" ? "in" : "cm"}`;
}

/**
 * A reckoned volume of a void.
 *
 * @param ml - millilitres
 * @param measures - the shop's measures
 * @returns whole cubic inches, or litres to a tenth
 * @example volumeInTheory(19926.7, "imperial") // "1216 cu in"
 */
export function volumeInTheory(ml: number, measures: Measures): string {
  if (measures === "imperial") return `${Math.round(ml / MILLILITRES_PER_CUBIC_INCH)} cu in`;
  return `${Number((ml / ML_PER_LITRE).toFixed(1))} l`;
}
