import type { Brand } from "#lib/units/brand";
import { fractionText } from "#lib/units/fraction-text";
import { measureParts, measureSum } from "#lib/units/measure-text";
import type { Measures } from "#lib/units/measures";
import { nearestInteger } from "#lib/units/nearest-integer";

/** A length: a whole number of micrometres, zero or more. */
export type Micrometres = Brand<number, "micrometre">;

export const MICROMETRES_PER_INCH = 25_400;
export const MICROMETRES_PER_FOOT = 304_800;
const MICROMETRES_PER_CENTIMETRE = 10_000;
const MICROMETRES_PER_MILLIMETRE = 1_000;

/** Micrometres in each word for a unit of length; the inch is 25.4 mm by the 1959 agreement. */
export const LENGTH_WORDS: ReadonlyMap<string, bigint> = new Map([
  ...["in", "inch", "inches", '"', "″", "”"].map((word): [string, bigint] => [word, 25_400n]),
  ...["ft", "foot", "feet", "'", "′", "’"].map((word): [string, bigint] => [word, 304_800n]),
  ...["yd", "yds", "yard", "yards"].map((word): [string, bigint] => [word, 914_400n]),
  ...["mm", "millimetre", "millimetres", "millimeter", "millimeters"].map((word): [string, bigint] => [
    word,
    1_000n,
  ]),
  ...["cm", "centimetre", "centimetres", "centimeter", "centimeters"].map((word): [string, bigint] => [
    word,
    10_000n,
  ]),
  ...["m", "metre", "metres", "meter", "meters"].map((word): [string, bigint] => [word, 1_000_000n]),
]);

/**
 * A length from its stored micrometres.
 *
 * @param um - micrometres
 * @returns the same number, as a length
 * @throws RangeError if `um` is not a safe integer, or is negative
 * @example micrometres(25400) // one inch
 */
export function micrometres(um: number): Micrometres {
  if (!Number.isSafeInteger(um) || um < 0) {
    throw new RangeError(`micrometres requires a whole number from zero, got ${um}`);
  }
  return um as Micrometres;
}

type LengthReading =
  | { readonly kind: "length"; readonly um: Micrometres; readonly typed: string }
  | { readonly kind: "unreadable"; readonly text: string };

/**
 * Reads a typed length; a number alone is in inches or centimetres, after the shop's measures.
 *
 * @param text - "12 in", "30.5 cm", "2 ft 3 in", "12"
 * @param measures - the shop's measures
 * @returns the nearest micrometre with the text as typed, or that it cannot be read
 * @example parseLength("12 in", "imperial") // { kind: "length", um: 304800, typed: "12 in" }
 */
export function parseLength(text: string, measures: Measures = "imperial"): LengthReading {
  const parts = measureParts(text, measures);
  const sum = parts && measureSum(parts, LENGTH_WORDS, bareLengthUnit(measures));
  if (!sum || sum.numerator > sum.denominator * BigInt(Number.MAX_SAFE_INTEGER))
    return { kind: "unreadable", text };
  return {
    kind: "length",
    um: micrometres(nearestInteger(sum.numerator, sum.denominator)),
    typed: text.trim(),
  };
}

/**
 * The unit of a length typed without one.
 *
 * @param measures - the shop's measures
 * @returns "in" or "cm"
 * @example bareLengthUnit("metric") // "cm"
 */
export function bareLengthUnit(measures: Measures): "in" | "cm" {
  return measures === "imperial" ? "in" : "cm";
}

/**
 * A length in words: inches with eighths, or centimetres; millimetres under one centimetre.
 *
 * @param um - micrometres
 * @param measures - the shop's measures
 * @returns rounded to 1/100 in or 1/10 cm where it is no exact eighth
 * @example formatLength(micrometres(241300), "imperial") // "9½ in"
 */
export function formatLength(um: Micrometres, measures: Measures): string {
  if (measures === "metric" && um > 0 && um < MICROMETRES_PER_CENTIMETRE) {
    return `${Number((um / MICROMETRES_PER_MILLIMETRE).toFixed(2))} mm`;
  }
  return `${lengthNumber(um, measures)} ${bareLengthUnit(measures)}`;
}

/**
 * The number of a length in the shop's measures, without its unit.
 *
 * @param um - micrometres
 * @param measures - the shop's measures
 * @returns inches with eighths, or centimetres
 * @example lengthNumber(micrometres(305000), "metric") // "30.5"
 */
function lengthNumber(um: Micrometres, measures: Measures): string {
  if (measures === "metric") return String(Number((um / MICROMETRES_PER_CENTIMETRE).toFixed(1)));
  return fractionText(um, MICROMETRES_PER_INCH) ?? String(Number((um / MICROMETRES_PER_INCH).toFixed(2)));
}

type SizesReading =
  | { readonly kind: "sizes"; readonly um: readonly Micrometres[]; readonly typed: string }
  | { readonly kind: "unreadable"; readonly text: string; readonly hasZero: boolean };

/**
 * Reads two or three sizes: a sheet's or a carton's. A unit behind one size holds for those without one;
 * where different units were typed, each size needs its own.
 *
 * @param text - "12 x 9 x 8", "30 × 20 × 10 cm", "24 by 36 in"
 * @param measures - the shop's measures, for sizes without a unit
 * @returns the sizes in the order typed, or that they cannot be read and whether that is for a zero
 * @example parseSizes("12 x 9 x 8", "imperial") // { kind: "sizes", um: [304800, 228600, 203200], typed: "12 x 9 x 8" }
 */
export function parseSizes(text: string, measures: Measures): SizesReading {
  const texts = text.trim().split(/\s*(?:[x×*]|\bby\b)\s*/i);
  const units = texts.map((part) => measureParts(part, measures)?.at(-1)?.unit ?? "");
  const typedUnits = new Set(units.filter((unit) => unit !== ""));
  const isEachClear = typedUnits.size <= 1 || !units.includes("");
  const [sole = bareLengthUnit(measures)] = typedUnits;
  const um = texts.flatMap((part, index) => {
    const reading = parseLength(units[index] === "" ? `${part} ${sole}` : part, measures);
    return reading.kind === "length" ? [reading.um] : [];
  });
  if (texts.length < 2 || texts.length > 3 || um.length !== texts.length || !isEachClear)
    return { kind: "unreadable", text, hasZero: false };
  if (um.includes(micrometres(0))) return { kind: "unreadable", text, hasZero: true };
  return { kind: "sizes", um, typed: text.trim() };
}

/**
 * Sizes in the shop's measures, without the unit.
 *
 * @param um - micrometres, in the order in which the trade names them
 * @param measures - the shop's measures
 * @returns inches with eighths, or centimetres
 * @example formatSizes([304800, 228600, 203200].map(micrometres), "imperial") // "12 × 9 × 8"
 */
export function formatSizes(um: readonly Micrometres[], measures: Measures): string {
  return um.map((size) => lengthNumber(size, measures)).join(" × ");
}
