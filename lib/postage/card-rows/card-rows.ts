import { bandRows } from "#lib/postage/card-rows/band-rows";
import { CARD_COLUMNS, type SourcedCard } from "#lib/postage/card-rows/card-row";
import { feeRows } from "#lib/postage/card-rows/fee-rows";
import { sizeRuleRows } from "#lib/postage/card-rows/size-rule-rows";
import { measureWords } from "#lib/postage/typed-measure";
import { minorDigitsOf } from "#lib/units/minor-digits";

/**
 * Cards as the rows of a file: a head row with the zones, then each card row by row. `readCardRows` reads them back as
 * the same cards.
 *
 * @param cards with their sources
 * @returns cells of each row; a head row stands again where the zones of a card are others
 */
export function cardRows(cards: readonly SourcedCard[]): string[][] {
  const widest = cards.reduce<readonly string[]>(
    (most, { card }) => (card.zones.length > most.length ? card.zones : most),
    [],
  );
  const rows: string[][] = [];
  let columns: readonly string[] | null = null;
  for (const each of cards) {
    const over: readonly string[] = columns ?? widest;
    const fitting = isWithin(each.card.zones, over) ? over : each.card.zones;
    if (fitting !== columns) rows.push([...CARD_COLUMNS, ...fitting]);
    columns = fitting;
    rows.push(...rowsOf(each, fitting));
  }
  return rows;
}

function rowsOf({ card, source, readOn }: SourcedCard, columns: readonly string[]): string[][] {
  const { service, currency, validFrom, validTo, zones, bands, roundUpTo, dimensional, fees } = card;
  const minorDigits = minorDigitsOf(currency);
  const under = (texts: readonly string[]) =>
    columns.map((column) => {
      const at = zones.indexOf(column);
      return at < 0 ? "" : (texts[at] ?? "");
    });
  const head: [string, string | null][] = [
    ["service", service],
    ["from", validFrom],
    ["to", validTo],
    ["currency", currency],
    ["source", source],
    ["read on", readOn],
    ["weight", roundUpTo === null ? null : `up to ${measureWords(roundUpTo)}`],
  ];
  return [
    ...head.flatMap(([what, text]) => (text === null ? [] : [["card", what, text]])),
    ...bands.flatMap((band, at) => bandRows(band, under, minorDigits, at === 0)),
    ...(dimensional === null ? [] : sizeRuleRows(dimensional, columns)),
    ...fees.flatMap((fee) => feeRows(fee, columns, zones, minorDigits)),
  ];
}

/** Whether zones stand over the columns in the same order, others between them or not. */
function isWithin(zones: readonly string[], columns: readonly string[]): boolean {
  const places = zones.map((zone) => columns.indexOf(zone));
  return places.every((place, at) => place > (places[at - 1] ?? -1));
}
