import { percentText } from "./percent-text";
import { bookedQuantity, type QuantityUnit } from "./quantity";

const PERCENT = 100;
/** A difference that no seller would call one. */
const ALIKE = 0.05;
const TIMES_FROM = 2;

/** How one sum compares with another. */
export type ChangeWords = {
  /** for a row of a table */
  readonly row: string;
  /** of parcels, in a sentence that goes on with "in the last four" */
  readonly sentence: string;
};

/**
 * How an expected sum compares with the one of as many weeks before.
 *
 * @param expected of the coming weeks
 * @param before of the weeks before, above 0
 * @example changeWords(120, 100) // { row: "20 % more", sentence: "20 % more than" }
 */
export function changeWords(expected: number, before: number): ChangeWords {
  const ratio = expected / before;
  if (Math.abs(ratio - 1) <= ALIKE) return { row: "about the same", sentence: "about as many as" };
  if (ratio >= TIMES_FROM) {
    const times = Number(ratio.toFixed(1));
    return { row: `${times} times as much`, sentence: `${times} times as many as` };
  }
  const percent = percentText(Math.abs(ratio - 1) * PERCENT);
  return ratio > 1
    ? { row: `${percent} more`, sentence: `${percent} more than` }
    : { row: `${percent} less`, sentence: `${percent} fewer than` };
}

/**
 * How an expected sum compares with the one of as many weeks before, with that one.
 *
 * @param expected of the coming weeks
 * @param before of the weeks before; null where the records do not reach that far
 * @param unit what is counted
 * @example changeCell(120, 100, "sheet") // "20 % more (100 sheets)"
 */
export function changeCell(expected: number, before: number | null, unit: QuantityUnit): string {
  if (before === null) return "not so many weeks of records yet";
  if (before <= 0) return expected > 0 ? "more (none then)" : "none, as then";
  return `${changeWords(expected, before).row} (${bookedQuantity(before, unit)})`;
}
