import { NO_PRICE_MARK } from "#lib/postage/card-rows/card-row";
import { plainMoney } from "#lib/postage/card-rows/plain-money";
import type { RateBand, ZonePrices } from "#lib/postage/rate-card";
import { measureWords } from "#lib/postage/typed-measure";

/**
 * A band as a table that can be pasted into a spreadsheet and back; `tableRows` takes it apart.
 *
 * @param band of a card
 * @param zones names over its prices
 * @param minorDigits of the currency
 * @returns rows with tabs between the cells
 */
export function rateTableText(
  { steps, beyond }: Pick<RateBand, "steps" | "beyond">,
  zones: readonly string[],
  minorDigits: number,
): string {
  const cells = (prices: ZonePrices) =>
    prices.map((minor) => (minor === null ? NO_PRICE_MARK : plainMoney(minor, minorDigits)));
  return [
    ["up to", ...zones],
    ...steps.map(({ upTo, prices }) => [measureWords(upTo), ...cells(prices)]),
    ...(beyond.kind === "notCarried"
      ? []
      : [[`each further ${measureWords(beyond.each)}`, ...cells(beyond.prices)]]),
  ]
    .map((row) => row.join("\t"))
    .join("\n");
}
