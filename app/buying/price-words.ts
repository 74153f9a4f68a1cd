import type { PriceMove } from "#lib/purchasing/price-move";
import { percentText } from "../outlook/percent-text";

const LEAST_CHANGE = 0.005;

/**
 * A change of price in words.
 *
 * @param ratio new over old; null where there is nothing to hold it against
 * @returns "8 % dearer", "3 % cheaper", "the same", "–"
 * @example changeWords(1.08) // "8 % dearer"
 */
export function changeWords(ratio: number | null): string {
  if (ratio === null) return "–";
  if (Math.abs(ratio - 1) < LEAST_CHANGE) return "the same";
  const percent = percentText(Math.abs(ratio - 1) * 100);
  return `${percent} ${ratio > 1 ? "dearer" : "cheaper"}`;
}

/**
 * The heading of the prices: how many rose against the time before, and which most.
 *
 * @param prices by supply
 * @returns a sentence
 */
export function priceFinding(
  prices: readonly { readonly supply: string; readonly move: Pick<PriceMove, "ratioToBefore"> }[],
): string {
  const risen = prices
    .flatMap(({ supply, move }) =>
      move.ratioToBefore === null ? [] : [{ supply, ratio: move.ratioToBefore }],
    )
    .filter(({ ratio }) => ratio >= 1 + LEAST_CHANGE)
    .toSorted((a, b) => b.ratio - a.ratio);
  const [most] = risen;
  if (most === undefined) return "No price rose when it was last paid";
  if (risen.length === 1) return `${most.supply} was ${changeWords(most.ratio)} when it was last bought`;
  return `${risen.length} supplies were dearer when they were last bought, ${most.supply} most: ${changeWords(most.ratio)}`;
}
