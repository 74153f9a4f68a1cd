import type { ZonePrices } from "#lib/postage/rate-card";
import { type MinorUnits, parseMoney } from "#lib/units/money";

/** How a row of prices is meant. */
export type PriceTerms = {
  readonly minorDigits: number;
  /** what an empty cell means: that the carrier gives no price, or that somebody forgot it */
  readonly blanks: "noPrice" | "refused";
};

/** What stands in a cell for which the carrier gives no price. */
const DASH = /^[-–—]$/;

/**
 * Reads the prices of a row.
 *
 * @param cells texts in the order of the zones
 * @param zones names, for the message
 * @param terms digits of the currency, and what an empty cell means
 * @returns prices, null where there is a dash; or what is wrong with the first cell that can't be read
 */
export function zonePrices(
  cells: readonly string[],
  zones: readonly string[],
  { minorDigits, blanks }: PriceTerms,
): { readonly prices: ZonePrices } | { readonly problem: string } {
  const prices: (MinorUnits | null)[] = [];
  for (const [at, zone] of zones.entries()) {
    const typed = (cells[at] ?? "").trim();
    if (typed === "" && blanks === "refused") {
      return {
        problem: `the price for ${zone} is missing. Type it, or a dash where the carrier gives none.`,
      };
    }
    const money = typed === "" || DASH.test(typed) ? null : parseMoney(typed, minorDigits);
    if (money?.kind === "unreadable") {
      return {
        problem: `“${typed}” for ${zone} is no price. Type it like 4.60, or a dash where there is none.`,
      };
    }
    prices.push(money === null ? null : money.minor);
  }
  return { prices };
}
