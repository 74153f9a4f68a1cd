import type { SumOutlook } from "./expected-sum";
import { percentText } from "./percent-text";
import { type QuantityUnit, quantity, roundedEstimate } from "./quantity";

const OFFERED = [-50, -20, -10, 0, 10, 20, 50, 100];
const PLAIN: ReadonlyMap<number, string> = new Map([
  [-100, "no"],
  [-50, "half as many"],
  [0, "as many"],
  [100, "twice as many"],
]);
/**
 * Percentages of parcels to choose from, the asked one among them.
 *
 * @param asked percent more; null where nothing is asked
 * @returns for the sentence "If I sent … parcels"
 */
export function percentChoices(asked: number | null): { readonly value: string; readonly words: string }[] {
  const all = asked === null ? OFFERED : [...new Set([...OFFERED, asked])].sort((a, b) => a - b);
  return all.map((percent) => ({ value: String(percent), words: percentMore(percent) }));
}

function percentMore(percent: number): string {
  return PLAIN.get(percent) ?? `${percentText(Math.abs(percent))} ${percent > 0 ? "more" : "fewer"}`;
}

/**
 * What a change would do to a sum, in words.
 *
 * @param now the sum as forecast
 * @param then the sum with the change
 * @param question weeks of the sum and what is counted
 * @example whatIfWords(now, then, { weeks: 4, unit: "sheet" })
 * // "About 3,290 sheets in the next 4 weeks instead of 2,740 sheets: 550 sheets more."
 */
export function whatIfWords(
  now: Pick<SumOutlook, "mean">,
  then: Pick<SumOutlook, "mean">,
  { weeks, unit }: { readonly weeks: number; readonly unit: QuantityUnit },
): string {
  // Of the figures as they are shown, so that a reader who subtracts them finds the same.
  const more = roundedEstimate(then.mean) - roundedEstimate(now.mean);
  const span = `in the next ${weeks} weeks`;
  if (more === 0) {
    return `It would change nothing: about ${quantity(then.mean, unit)} ${span}, as before.`;
  }
  return `About ${quantity(then.mean, unit)} ${span} instead of ${quantity(now.mean, unit)}: ${quantity(Math.abs(more), unit)} ${more > 0 ? "more" : "less"}.`;
}
