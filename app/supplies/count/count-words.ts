import { type Amount, amount } from "#lib/units/amount";
import { formatAmount } from "#lib/units/amount-text";
import type { UseUnit } from "#lib/units/use-unit";

type CountOutcome =
  | { readonly kind: "counted"; readonly difference: Amount | null }
  | { readonly kind: "already-counted" };

/**
 * What a count found, beside the book.
 *
 * @param counted what is on the shelf
 * @param outcome counted less book; null for the first count
 * @param unit the supply's use unit
 * @returns a sentence
 * @example countWords(amountOfUnits(61), { kind: "counted", difference: amountOfUnits(-4) }, "foot")
 *   // "61 ft counted, 4 ft less than the book."
 */
export function countWords(counted: Amount, outcome: CountOutcome, unit: UseUnit): string {
  const found = `${formatAmount(counted, unit)} counted`;
  if (outcome.kind === "already-counted") return `${found}; this count was saved before.`;
  if (outcome.difference === null) return `${found}, the first count of this supply.`;
  if (outcome.difference === 0) return `${found}, just as in the book.`;
  const size = formatAmount(amount(Math.abs(outcome.difference)), unit);
  return `${found}, ${size} ${outcome.difference < 0 ? "less" : "more"} than the book.`;
}
