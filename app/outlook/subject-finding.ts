import { countWord } from "../pack/parcel-words";
import { type QuantityUnit, quantity, quantityRange } from "./quantity";
import type { RunningTotal } from "./running-totals";

/**
 * The first line of a subject: about how much a week, and the band of the sum that matters.
 *
 * @param name of the supply or item type; null for the shop
 * @param total the sum over the weeks that stock must last
 * @param unit what is counted
 * @returns a sentence
 * @example subjectFinding("Packing paper", total, "sheet")
 * // "Packing paper: about 685 sheets a week, 1,900 to 2,300 sheets in the next three weeks."
 */
export function subjectFinding(name: string | null, total: RunningTotal, unit: QuantityUnit): string {
  const { weeks, mean, low, high } = total;
  const next = weeks === 1 ? "the next week" : `the next ${countWord(weeks)} weeks`;
  if (mean <= 0) return `${name ?? "Parcels"}: none expected in ${next}.`;
  const rate = `about ${quantity(mean / weeks, unit)} a week`;
  const band = `${quantityRange(low, high, unit)} in ${next}`;
  return name === null ? `${capitalised(rate)}: ${band}.` : `${name}: ${rate}, ${band}.`;
}

function capitalised(text: string): string {
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
}
