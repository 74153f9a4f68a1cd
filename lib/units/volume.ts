import { LENGTH_WORDS, parseSizes } from "#lib/units/length";
import { measureParts, measureSum } from "#lib/units/measure-text";
import type { Measures } from "#lib/units/measures";
import { nearestInteger } from "#lib/units/nearest-integer";

const MICROMETRES_PER_CENTIMETRE = 10_000n;
/** Cubic micrometres in a millilitre. */
const CUBED = MICROMETRES_PER_CENTIMETRE ** 3n;
const SIDES = 3;
const ML_PER_LITRE = 1_000;
const ML_PER_CUBIC_FOOT = 28_316.846_592;

/** Cubic micrometres in each word for a unit of volume. */
const VOLUME_WORDS: ReadonlyMap<string, bigint> = new Map([
  ...[...LENGTH_WORDS].flatMap(([word, um]): [string, bigint][] =>
    ["cu ", "cu. ", "cubic "].map((before): [string, bigint] => [`${before}${word}`, um ** 3n]),
  ),
  ...[...LENGTH_WORDS].map(([word, um]): [string, bigint] => [`${word}³`, um ** 3n]),
  ...["ml", "millilitre", "millilitres", "milliliter", "milliliters"].map((word): [string, bigint] => [
    word,
    CUBED,
  ]),
  ...["l", "litre", "litres", "liter", "liters"].map((word): [string, bigint] => [word, CUBED * 1_000n]),
]);

type VolumeReading =
  | { readonly kind: "volume"; readonly ml: number; readonly typed: string }
  | { readonly kind: "unreadable"; readonly text: string };

/**
 * Reads the room that something takes: a volume, or the three sides of its box. A number alone is not read, for it
 * could be cubic feet or litres.
 *
 * @param text - "1.9 cu ft", "25 l", "40 x 40 x 30 cm", "0.05 m³"
 * @param measures - the shop's measures, for sides without a unit and for commas
 * @returns the nearest millilitre above zero with the text as typed, or that it cannot be read
 * @example parseVolume("40 x 40 x 30 cm", "metric") // { kind: "volume", ml: 48000, typed: "40 x 40 x 30 cm" }
 */
export function parseVolume(text: string, measures: Measures): VolumeReading {
  const cubic = sidesVolume(text, measures) ?? wordVolume(text, measures);
  if (cubic === null || cubic.numerator > cubic.denominator * CUBED * BigInt(Number.MAX_SAFE_INTEGER)) {
    return { kind: "unreadable", text };
  }
  const ml = nearestInteger(cubic.numerator, cubic.denominator * CUBED);
  return ml > 0 ? { kind: "volume", ml, typed: text.trim() } : { kind: "unreadable", text };
}

function sidesVolume(text: string, measures: Measures) {
  const sizes = parseSizes(text, measures);
  if (sizes.kind !== "sizes" || sizes.um.length !== SIDES) return null;
  return { numerator: sizes.um.reduce((product, um) => product * BigInt(um), 1n), denominator: 1n };
}

function wordVolume(text: string, measures: Measures) {
  const parts = measureParts(text.replace(/([a-z])3(?=\s|$)/gi, "$1³"), measures);
  return parts && measureSum(parts, VOLUME_WORDS, null);
}

/**
 * A volume in words.
 *
 * @param ml - millilitres
 * @param measures - the shop's measures
 * @returns cubic feet or litres, to one decimal from 10 on, else to two
 * @example formatVolume(53802, "imperial") // "1.9 cu ft"
 */
export function formatVolume(ml: number, measures: Measures): string {
  const value = measures === "metric" ? ml / ML_PER_LITRE : ml / ML_PER_CUBIC_FOOT;
  const unit = measures === "metric" ? "l" : "cu ft";
  return `${Number(value.toFixed(value >= 10 ? 1 : 2)).toLocaleString("en-US")} ${unit}`;
}
