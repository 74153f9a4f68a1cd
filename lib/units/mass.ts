import type { Brand } from "#lib/units/brand";
import { measureParts, measureSum } from "#lib/units/measure-text";
import type { Measures } from "#lib/units/measures";
import { nearestInteger } from "#lib/units/nearest-integer";

/** A mass: a whole number of milligrams, zero or more. */
export type Milligrams = Brand<number, "milligram">;

export const MILLIGRAMS_PER_GRAM = 1_000;
/** The avoirdupois pound is 0.45359237 kg by the 1959 agreement. */
export const MILLIGRAMS_PER_POUND = 453_592.37;
const MILLIGRAMS_PER_OUNCE = MILLIGRAMS_PER_POUND / 16;

/** Half of the last stored milligram: a stored pound is 0.37 mg short of one. */
const STORED_HALF = 0.5;
const NANOGRAMS_PER_MILLIGRAM = 1_000_000n;

/** Nanograms in each word for a unit of mass, so that ounces are whole numbers. */
export const MASS_WORDS: ReadonlyMap<string, bigint> = new Map([
  ...["mg", "milligram", "milligrams"].map((word): [string, bigint] => [word, 1_000_000n]),
  ...["g", "gr", "gram", "grams", "gramme", "grammes"].map((word): [string, bigint] => [
    word,
    1_000_000_000n,
  ]),
  ...["kg", "kilo", "kilos", "kilogram", "kilograms"].map((word): [string, bigint] => [
    word,
    1_000_000_000_000n,
  ]),
  ...["lb", "lbs", "pound", "pounds"].map((word): [string, bigint] => [word, 453_592_370_000n]),
  ...["oz", "ounce", "ounces"].map((word): [string, bigint] => [word, 28_349_523_125n]),
]);

/**
 * A mass from its stored milligrams.
 *
 * @param mg - milligrams
 * @returns the same number, as a mass
 * @throws RangeError if `mg` is not a safe integer, or is negative
 * @example milligrams(27216) // one sheet of packing paper
 */
export function milligrams(mg: number): Milligrams {
  if (!Number.isSafeInteger(mg) || mg < 0) {
    throw new RangeError(`milligrams requires a whole number from zero, got ${mg}`);
  }
  return mg as Milligrams;
}

type MassReading =
  | { readonly kind: "mass"; readonly mg: Milligrams; readonly typed: string }
  | { readonly kind: "unreadable"; readonly text: string };

/**
 * Reads a typed mass. Keep `typed`: a limit is compared in its own unit, and 15.999 oz is not 16 oz.
 *
 * @param text - "2 lb 15 oz", "1.2 kg", "450 g", "15.999 oz"
 * @param measures - reads a number alone as ounces or grams; null asks for the unit
 * @returns the nearest milligram with the text as typed, or that it cannot be read
 * @example parseMass("450 g") // { kind: "mass", mg: 450000, typed: "450 g" }
 */
export function parseMass(text: string, measures: Measures | null = null): MassReading {
  const parts = measureParts(text, measures ?? "metric");
  const sum = parts && measureSum(parts, MASS_WORDS, bareMassUnit(measures));
  const denominator = sum ? sum.denominator * NANOGRAMS_PER_MILLIGRAM : 1n;
  if (!sum || sum.numerator > denominator * BigInt(Number.MAX_SAFE_INTEGER))
    return { kind: "unreadable", text };
  return { kind: "mass", mg: milligrams(nearestInteger(sum.numerator, denominator)), typed: text.trim() };
}

function bareMassUnit(measures: Measures | null): string | null {
  if (measures === null) return null;
  return measures === "imperial" ? "oz" : "g";
}

/**
 * A mass in words.
 *
 * @param mg - milligrams
 * @param measures - the shop's measures
 * @returns pounds and whole ounces ("2 lb 15 oz"; tenths of an ounce under a pound), or kilograms to 10 g
 *   ("1.33 kg"; whole grams under a kilogram, tenths under 10 g)
 * @example formatMass(milligrams(1332428), "imperial") // "2 lb 15 oz"
 */
export function formatMass(mg: Milligrams, measures: Measures): string {
  return measures === "imperial" ? imperialMass(mg) : metricMass(mg);
}

function imperialMass(mg: Milligrams): string {
  if (mg + STORED_HALF < MILLIGRAMS_PER_POUND) {
    const ounces = mg / MILLIGRAMS_PER_OUNCE;
    return `${shortOf(ounces, 16, 1)} oz`;
  }
  const ounces = Math.round(mg / MILLIGRAMS_PER_OUNCE);
  const rest = ounces % 16;
  const pounds = `${(ounces - rest) / 16} lb`;
  return rest === 0 ? pounds : `${pounds} ${rest} oz`;
}

function metricMass(mg: Milligrams): string {
  const grams = mg / MILLIGRAMS_PER_GRAM;
  if (grams >= 1000) return `${Number((grams / 1000).toFixed(2))} kg`;
  return `${shortOf(grams, 1000, grams < 10 ? 1 : 0)} g`;
}

/** Rounded, but never up to a limit that the value stays short of: 15.999 oz is not 16 oz. */
function shortOf(value: number, limit: number, digits: number): number {
  const rounded = Number(value.toFixed(digits));
  return rounded < limit ? rounded : Math.min(Number(value.toFixed(3)), limit - 0.001);
}
