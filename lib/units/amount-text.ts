import { AMOUNT_PER_UNIT, type Amount, amount, amountOfUnits, unitsOf } from "#lib/units/amount";
import { fractionText } from "#lib/units/fraction-text";
import { LENGTH_WORDS } from "#lib/units/length";
import { measureParts, measureSum } from "#lib/units/measure-text";
import type { Measures } from "#lib/units/measures";
import { nearestInteger } from "#lib/units/nearest-integer";
import type { Ratio } from "#lib/units/number-text";
import { type UseUnit, unitWord } from "#lib/units/use-unit";

/** From here on a reckoned amount is shown whole: nobody counts tenths of a sheet in a pile. */
const WHOLE_FROM = 20;

/** Digits behind the point that tell every 1/12,000 from its neighbours. */
const EXACT_DECIMALS = 5;

/** Square micrometres in each word for a unit of area. */
const AREA_WORDS: ReadonlyMap<string, bigint> = new Map([
  ...areaWords(["in", "inch", "inches"], 25_400n),
  ...areaWords(["ft", "foot", "feet"], 304_800n),
  ...areaWords(["yd", "yard", "yards"], 914_400n),
  ...areaWords(["cm", "centimetre", "centimetres", "centimeter", "centimeters"], 10_000n),
  ...areaWords(["m", "metre", "metres", "meter", "meters"], 1_000_000n),
]);

/** What each use unit measures, in the smallest unit of its table of words. */
const KINDS: Readonly<
  Record<UseUnit, { readonly words: ReadonlyMap<string, bigint>; readonly one: bigint }>
> = {
  sheet: { words: countWords(["sheet", "sheets"]), one: 1n },
  piece: { words: countWords(["piece", "pieces", "pc", "pcs"]), one: 1n },
  each: { words: countWords(["each", "ea", "pc", "pcs", "piece", "pieces"]), one: 1n },
  strip: { words: countWords(["strip", "strips"]), one: 1n },
  foot: { words: LENGTH_WORDS, one: 304_800n },
  metre: { words: LENGTH_WORDS, one: 1_000_000n },
  "square-foot": { words: AREA_WORDS, one: 304_800n ** 2n },
  "square-metre": { words: AREA_WORDS, one: 1_000_000n ** 2n },
};

function areaWords(lengths: readonly string[], um: bigint): [string, bigint][] {
  return lengths.flatMap((word): [string, bigint][] => [
    [`sq ${word}`, um ** 2n],
    [`sq. ${word}`, um ** 2n],
    [`square ${word}`, um ** 2n],
    [`${word}²`, um ** 2n],
  ]);
}

function countWords(words: readonly string[]): ReadonlyMap<string, bigint> {
  return new Map(words.map((word) => [word, 1n]));
}

/**
 * An amount in words. Halves, thirds, quarters and eighths are shown exactly; other amounts are rounded: whole from
 * 20 use units on, else to one decimal, and to the first digit below a tenth. Thousands are grouped: where the text
 * goes into a field, take `amountAsTyped`.
 *
 * @param value - amount; below zero takes a minus sign
 * @param unit - use unit
 * @returns "1⅓ sheets", "7¼ ft", "1,120 sheets"; "9" for each
 * @example formatAmount(amount(16000), "sheet") // "1⅓ sheets"
 */
export function formatAmount(value: Amount, unit: UseUnit): string {
  const size = amount(Math.abs(value));
  const exact = fractionText(size, AMOUNT_PER_UNIT);
  const number = exact ?? roundedText(unitsOf(size));
  const count = exact === null ? Number(number) : unitsOf(size);
  return withSignAndUnit(value, grouped(number), unitWord(unit, count));
}

/**
 * A forecast or an average in words: as `formatAmount`, but whole from 20 use units on, because no eighth of an
 * average of hundreds can be known.
 *
 * @param value - amount that was reckoned, not booked
 * @param unit - use unit
 * @returns "636 pieces", "7⅛ ft"
 * @example formatEstimate(amountOfUnits(635.875), "piece") // "636 pieces"
 */
export function formatEstimate(value: Amount, unit: UseUnit): string {
  const units = unitsOf(value);
  return formatAmount(Math.abs(units) < WHOLE_FROM ? value : amountOfUnits(Math.round(units)), unit);
}

/**
 * An amount as a person would type it: exact, without grouping, so that `parseAmount` reads the very same amount
 * back whatever the shop's measures.
 *
 * @param value - amount, zero or more
 * @param unit - use unit
 * @returns "1⅓ sheets", "57.15 m", "1120 sheets"; "9" for each
 * @example amountAsTyped(amountOfUnits(57.15), "metre") // "57.15 m"
 */
export function amountAsTyped(value: Amount, unit: UseUnit): string {
  const size = amount(Math.abs(value));
  const number = fractionText(size, AMOUNT_PER_UNIT) ?? String(Number(unitsOf(size).toFixed(EXACT_DECIMALS)));
  return withSignAndUnit(value, number, unitWord(unit, unitsOf(size)));
}

function withSignAndUnit(value: Amount, number: string, word: string): string {
  return `${value < 0 ? "−" : ""}${number}${word === "" ? "" : " "}${word}`;
}

/** "1120⅛" as "1,120⅛"; a number below a thousand stays as it is. */
function grouped(number: string): string {
  return number.replace(/^\d{4,}/, (whole) => Number(whole).toLocaleString("en-US"));
}

function roundedText(units: number): string {
  if (units >= WHOLE_FROM) return String(Math.round(units));
  return String(Number(units < 0.1 ? units.toPrecision(1) : units.toFixed(1)));
}

type AmountReading =
  | {
      readonly kind: "amount";
      readonly amount: Amount;
      readonly typedValue: string;
      readonly typedUnit: string;
    }
  | { readonly kind: "unreadable"; readonly text: string };

/**
 * Reads an amount as typed on the bench. A number alone is in use units; another unit of the same sort is converted
 * once, exactly, and rounded to the nearest 1/12,000. Keep `typedValue` and `typedUnit`: they are what is shown back.
 *
 * @param text - "1 1/3", "1⅓", "0.5", "2,5", "3 ft", "1 m", "90 in", "4 pieces"
 * @param unit - the supply's use unit
 * @param measures - the shop's measures, for the reading of commas
 * @returns the amount with what was typed, or that it cannot be read (or is in a unit of another sort)
 * @example parseAmount("90 in", "foot", "imperial") // { kind: "amount", amount: 90000, typedValue: "90", typedUnit: "in" }
 */
export function parseAmount(text: string, unit: UseUnit, measures: Measures): AmountReading {
  const parts = measureParts(text, measures);
  const only = parts?.length === 1 ? parts[0] : undefined;
  const sum = parts && amountSum(parts, unit);
  if (!sum || sum.numerator > sum.denominator * BigInt(Number.MAX_SAFE_INTEGER))
    return { kind: "unreadable", text };
  const read = amount(nearestInteger(sum.numerator, sum.denominator));
  const bareUnit = unitWord(unit, unitsOf(read));
  if (only === undefined) return { kind: "amount", amount: read, typedValue: text.trim(), typedUnit: "" };
  const typedUnit = only.unit === "" ? bareUnit : only.unit;
  return { kind: "amount", amount: read, typedValue: only.valueText, typedUnit };
}

function amountSum(parts: Parameters<typeof measureSum>[0], unit: UseUnit): Ratio | null {
  const { words, one } = KINDS[unit];
  const only = parts.length === 1 ? parts[0] : undefined;
  if (only?.unit === "") {
    return { numerator: only.value.numerator * BigInt(AMOUNT_PER_UNIT), denominator: only.value.denominator };
  }
  const sum = measureSum(parts, words, null);
  return sum && { numerator: sum.numerator * BigInt(AMOUNT_PER_UNIT), denominator: sum.denominator * one };
}
