import { type Amount, amount } from "#lib/units/amount";
import { formatAmount, formatEstimate } from "#lib/units/amount-text";
import type { UseUnit } from "#lib/units/use-unit";

type CountOutcome =
  | { readonly kind: "counted"; readonly difference: Amount | null }
  | { readonly kind: "already-counted" };

type Range = { readonly low: Amount; readonly high: Amount };

/**
 * What a count found, beside the book.
 *
 * @param counted what is on the shelf, and between what it may be where it was measured
 * @param outcome counted less book; null for the first count
 * @param unit the supply's use unit
 * @returns a sentence
 * @example countWords({ amount: amountOfUnits(61) }, { kind: "counted", difference: amountOfUnits(-4) }, "foot")
 *   // "61 ft counted, 4 ft less than the book."
 */
export function countWords(
  { amount: counted, range }: { readonly amount: Amount; readonly range?: Range },
  outcome: CountOutcome,
  unit: UseUnit,
): string {
  const found = `${formatAmount(counted, unit)} counted${rangeWords(range, unit)}`;
  if (outcome.kind === "already-counted") return `${found}; this count was saved before.`;
  if (outcome.difference === null) return `${found}, the first count of this supply.`;
  if (outcome.difference === 0) return `${found}, just as in the book.`;
  const size = formatAmount(amount(Math.abs(outcome.difference)), unit);
  return `${found}, ${size} ${outcome.difference < 0 ? "less" : "more"} than the book.`;
}

/** How far the measure may be off; nothing where that is less than a shelf is counted to. */
function rangeWords(range: Range | undefined, unit: UseUnit): string {
  if (range === undefined) return "";
  const [low, high] = [range.low, range.high].map((each) => formatEstimate(each, unit));
  return low === high ? "" : ` (the measure allows ${low} to ${high})`;
}
