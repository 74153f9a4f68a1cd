import { z } from "zod";
import { unitsOf } from "#lib/units/amount";
import { parseAmount } from "#lib/units/amount-text";
import { type Day, day, isDay } from "#lib/units/day";
import { parseLength, parseSizes } from "#lib/units/length";
import { parseMass } from "#lib/units/mass";
import type { Measures } from "#lib/units/measures";
import { parseMoney } from "#lib/units/money";
import type { UseUnit } from "#lib/units/use-unit";
import { parseVolume } from "#lib/units/volume";

const MOST_LETTERS = 200;
/** So that ten thousand packs of it still add up exactly. */
const MOST_UNITS = 10_000_000;
/** The largest sum that a column for money holds. */
const MOST_MINOR = 2_147_483_647;
/** The largest room that a column for millilitres holds: some 2,000 cubic metres. */
const MOST_ML = 2_147_483_647;
const DECIMAL_EXAMPLE = "12.50";

/** A text that must be there. */
export function neededText(problem: string, most = MOST_LETTERS) {
  return z.string(problem).trim().min(1, problem).max(most, `At most ${most} letters.`);
}

/** A text that may be left out; null then. */
export const optionalText = z
  .string()
  .trim()
  .max(2000, "At most 2,000 letters.")
  .optional()
  .transform((text) => text ?? null);

/** A tick: there or not. */
export const tick = z
  .string()
  .optional()
  .transform((value) => value === "yes");

/** A whole number between two limits, as typed. */
export function wholeNumber(least: number, most: number) {
  const problem = `Write a whole number from ${least} to ${most.toLocaleString("en")}.`;
  return z
    .string(problem)
    .regex(/^\d+$/, problem)
    .transform(Number)
    .refine((number) => number >= least && number <= most, problem);
}

/** A day of the calendar. */
export const dayText = z
  .string("Choose a day.")
  .refine(isDay, "Write a day like 2026-11-25.")
  .transform((text): Day => day(text));

/** A positive amount in a use unit, with what was typed. */
export function amountTyped(unit: UseUnit, measures: Measures) {
  return z.string("Write an amount.").transform((text, context) => {
    const read = parseAmount(text, unit, measures);
    if (read.kind === "amount" && unitsOf(read.amount) > MOST_UNITS) {
      return refuse(context, text, `an amount up to ${MOST_UNITS.toLocaleString("en")}`);
    }
    if (read.kind === "amount" && read.amount >= 0) return read;
    return refuse(context, text, "an amount like 174, 1 1/3 or 3 ft");
  });
}

/** An amount above zero. */
export function amountAboveZero(unit: UseUnit, measures: Measures) {
  return amountTyped(unit, measures).refine((read) => read.amount > 0, "Write an amount above zero.");
}

/** Money in minor units of a currency. */
export function moneyTyped(minorDigits: number) {
  return z.string(`Write a price like ${DECIMAL_EXAMPLE}.`).transform((text, context) => {
    const read = parseMoney(text, minorDigits);
    if (read.kind === "money" && read.minor >= 0 && read.minor <= MOST_MINOR) return read.minor as number;
    return refuse(context, text, `a price like ${DECIMAL_EXAMPLE}`);
  });
}

/** A mass with what was typed. */
export function massTyped(measures: Measures) {
  return z.string("Write a weight.").transform((text, context) => {
    const read = parseMass(text, measures);
    return read.kind === "mass" ? read : refuse(context, text, "a weight like 27 g or 2 lb 15 oz");
  });
}

/** A length with what was typed. */
export function lengthTyped(measures: Measures) {
  return z.string("Write a length.").transform((text, context) => {
    const read = parseLength(text, measures);
    return read.kind === "length" ? read : refuse(context, text, "a length like 18.5 in or 47 cm");
  });
}

/** Two or three sizes with what was typed. */
export function sizesTyped(measures: Measures) {
  return z.string("Write the sizes.").transform((text, context) => {
    const read = parseSizes(text, measures);
    if (read.kind === "sizes") return read;
    if (!read.hasZero)
      return refuse(context, text, "sizes like 12 x 9 x 8 or 30 x 23 cm, or a unit behind each");
    context.addIssue({
      code: "custom",
      message: `“${text}” has a size of zero. Write every size above zero, or leave the field empty.`,
    });
    return z.NEVER;
  });
}

/** The room that something takes, with what was typed. */
export function volumeTyped(measures: Measures) {
  return z.string("Write how much room it takes.").transform((text, context) => {
    const read = parseVolume(text, measures);
    if (read.kind === "volume" && read.ml <= MOST_ML) return read;
    return refuse(context, text, "a volume like 1.9 cu ft or 25 l, or three sides like 40 x 40 x 30 cm");
  });
}

function refuse(context: z.RefinementCtx, text: string, example: string): never {
  context.addIssue({ code: "custom", message: `“${text}” can’t be read. Write ${example}.` });
  return z.NEVER;
}
