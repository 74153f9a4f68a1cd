import { AMOUNT_PER_UNIT, type Amount, amount } from "#lib/units/amount";
import { formatEstimate } from "#lib/units/amount-text";
import { formatDay } from "#lib/units/day-text";
import type { UseUnit } from "#lib/units/use-unit";
import type { PeakRow } from "./peak-rows";

/**
 * An amount to have in the house: whole use units, rounded up.
 *
 * @param of the amount
 * @param unit its use unit
 * @example amountToHave(amountOfUnits(18.7), "each") // "19"
 */
export function amountToHave(of: Amount, unit: UseUnit): string {
  return formatEstimate(amount(Math.ceil(of / AMOUNT_PER_UNIT) * AMOUNT_PER_UNIT), unit);
}

/** The busiest week said once for all, or with each supply where they differ; one of the two says nothing. */
export type BusiestWords = { readonly together: string; readonly each: (row: PeakRow) => string };

/**
 * The busiest week in words.
 *
 * @param rows supplies that the peak takes more of
 * @returns words that may stand before a sentence
 * @example busiestWords(rows).together // "Busiest in the week from 9 Nov, 1.8 times this week’s use. "
 */
export function busiestWords(rows: readonly PeakRow[]): BusiestWords {
  const wordsOf = (row: PeakRow) =>
    `in the week from ${formatDay(row.busiestWeek)}, ${row.times.toFixed(1)} times this week’s use`;
  const [first] = rows;
  const isOne = first !== undefined && rows.every((row) => wordsOf(row) === wordsOf(first));
  return isOne
    ? { together: `Busiest ${wordsOf(first)}. `, each: () => "" }
    : { together: "", each: (row) => `Busiest ${wordsOf(row)}; ` };
}
