import { bandFromRows, hasPriceUnder } from "#lib/postage/card-rows/band-rows";
import type { RowReader, RowTerms, SourcedCard } from "#lib/postage/card-rows/card-row";
import { feeFromRows } from "#lib/postage/card-rows/fee-rows";
import type { CardRows, SaidRow } from "#lib/postage/card-rows/grouped-rows";
import { saidDay, saidMass } from "#lib/postage/card-rows/said-values";
import { sizeRuleFromRows } from "#lib/postage/card-rows/size-rule-rows";
import { partOf, type RateCardFault } from "#lib/postage/rate-card-fault";
import { rateCardFaults } from "#lib/postage/rate-card-faults";
import { foreignCurrency } from "#lib/units/foreign-currency";
import { minorDigitsOf } from "#lib/units/minor-digits";

/**
 * Reads one card from its rows, and looks for its faults.
 *
 * @param rows of the card, part by part
 * @param zones over its columns, as the shop names them
 * @param terms measures and currency
 * @param refuse notes what is wrong with a row
 * @returns null where something was refused
 */
export function cardFromRows(
  rows: CardRows,
  zones: readonly string[],
  { measures, currency }: RowTerms,
  refuse: RowReader["refuse"],
): SourcedCard | null {
  let isRefused = false;
  const noted: RowReader["refuse"] = (line, words) => {
    isRefused = true;
    return refuse(line, words);
  };
  const reader: RowReader = { measures, minorDigits: minorDigitsOf(currency), zones, refuse: noted };
  const { head } = rows;
  const typedCurrency = head.said.get("currency");
  if (typedCurrency !== undefined && typedCurrency.value.toUpperCase() !== currency) {
    noted(
      typedCurrency.line,
      `“${typedCurrency.value}” is not the shop's currency, ${currency}. Change the prices to ${currency}, or leave the card out.`,
    );
  }
  refuseForeign(rows, currency, noted);
  const validFrom = saidDay(head, "from", reader);
  if (validFrom === null && !isRefused)
    noted(head.line, "the card does not say from which day it holds. Add: card, from, 2026-11-25.");
  const onCard = zones.map((_, at) => rows.bands.some((band) => hasPriceUnder(band, at)));
  const source = head.said.get("source")?.value ?? "";
  const read = {
    service: head.said.get("service")?.value ?? "",
    currency,
    validTo: saidDay(head, "to", reader),
    zones: zones.filter((_, at) => onCard[at] === true),
    bands: rows.bands.map((band) => bandFromRows(band, onCard, reader)),
    roundUpTo: saidMass(head, "weight", reader),
    dimensional: sizeRuleFromRows(rows.size, reader),
    fees: rows.fees.map((fee) => feeFromRows(fee, onCard, reader)),
  };
  const readOn = saidDay(head, "read on", reader);
  if (isRefused || validFrom === null) return null;
  const card = { ...read, validFrom };
  for (const fault of rateCardFaults(card)) {
    if (fault.severity === "error") noted(lineOf(fault, rows), fault.message);
  }
  return isRefused ? null : { card, source: source === "" ? null : source, readOn };
}

/** A price in another currency is no price of the shop's. */
function refuseForeign(rows: CardRows, currency: string, refuse: RowReader["refuse"]): void {
  for (const { line, cells } of pricedRows(rows)) {
    const foreign = cells.map((cell) => foreignCurrency(cell, currency)).find((found) => found !== null);
    if (foreign !== undefined) {
      refuse(line, `“${foreign}” is not the shop's currency, ${currency}. Change the prices to ${currency}.`);
    }
  }
}

/** The rows with prices under the zones. */
function pricedRows({ bands, fees }: CardRows): SaidRow[] {
  return [
    ...bands.flatMap(({ steps, said }) => [...steps, said.get("further") ?? []].flat()),
    ...fees.flatMap(({ amounts }) => amounts),
  ];
}

/** The row of the part that a fault is about. */
function lineOf({ part = "" }: RateCardFault, { head, bands, size, fees }: CardRows): number {
  const lines = new Map<string, number>([[partOf("size"), [...size.said.values()][0]?.line ?? head.line]]);
  for (const [bandAt, band] of bands.entries()) {
    lines.set(partOf("band", bandAt), band.line);
    lines.set(partOf("further", bandAt), band.said.get("further")?.line ?? band.line);
    for (const [at, { line }] of band.steps.entries()) lines.set(partOf("step", bandAt, at), line);
  }
  for (const [at, { line }] of fees.entries()) lines.set(partOf("fee", at), line);
  return lines.get(part) ?? head.line;
}
