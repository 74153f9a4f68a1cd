import { cardFromRows } from "#lib/postage/card-rows/card-from-rows";
import type { CardRow, RowProblem, RowTerms, SourcedCard } from "#lib/postage/card-rows/card-row";
import { groupedRows } from "#lib/postage/card-rows/grouped-rows";
import { unknownZoneWords, zoneNamed } from "#lib/postage/zone-named";

/** Cards with the row that each begins in, or all that is wrong with the rows. */
export type CardsRead =
  | { readonly kind: "cards"; readonly cards: readonly (SourcedCard & { readonly line: number })[] }
  | { readonly kind: "unreadable"; readonly problems: readonly RowProblem[] };

/**
 * Reads cards from rows: all of them, or none where anything is wrong.
 *
 * @param rows as `cardRows` writes them; empty rows are left out
 * @param terms measures, currency and zones of the shop
 * @returns cards without errors among their `rateCardFaults`, in the order of the rows
 */
export function readCardRows(rows: readonly CardRow[], terms: RowTerms): CardsRead {
  const grouped = groupedRows(rows);
  const problems = [...grouped.problems];
  const refuse = (line: number, words: string): null => {
    problems.push({ line, words });
    return null;
  };
  for (const { line, zones } of grouped.heads) {
    for (const words of headProblems(zones, terms.zones)) refuse(line, words);
  }
  const cards =
    problems.length > 0
      ? []
      : grouped.cards.flatMap((each) => {
          const zones = each.zones.map((zone) => zoneNamed(zone, terms.zones ?? []) ?? zone);
          const card = cardFromRows(each, zones, terms, refuse);
          return card === null ? [] : [{ ...card, line: each.head.line }];
        });
  if (problems.length === 0 && cards.length === 0) {
    const line = rows.at(-1)?.line ?? 1;
    problems.push({
      line,
      words: "there is no card under the names of the columns. Begin one with: card, service, its name.",
    });
  }
  if (problems.length > 0)
    return { kind: "unreadable", problems: problems.toSorted((a, b) => a.line - b.line) };
  return { kind: "cards", cards };
}

function headProblems(zones: readonly string[], known: readonly string[] | null): string[] {
  if (zones.length === 0)
    return ["no zone stands over a column of prices. Name your zones behind row, what, value."];
  const names = zones.map((zone) => zoneNamed(zone, known ?? []) ?? zone);
  return names.flatMap((zone, at) => {
    if (zone === "") return [`column ${at + 4} has no zone over it. Name it, or move the prices together.`];
    if (names.indexOf(zone) !== at) return [`zone ${zone} stands over two columns. Take one of them out.`];
    return known === null || known.includes(zone) ? [] : [unknownZoneWords(zone, known)];
  });
}
