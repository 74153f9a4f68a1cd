import { cardFromRows } from "#lib/postage/card-rows/card-from-rows";
import type { SourcedCard } from "#lib/postage/card-rows/card-row";
import { feeLineRows } from "#lib/postage/card-rows/fee-line";
import type { BandRows, CardRows, FeeRows, SaidPart } from "#lib/postage/card-rows/grouped-rows";
import { FURTHER_MARK, tableRows } from "#lib/postage/rate-table";
import { unknownZoneWords, zoneNamed } from "#lib/postage/zone-named";
import type { Measures } from "#lib/units/measures";

/** Names of the fields of a rate card; a problem is noted with the place of its field. */
const FIELDS = [
  "service",
  "validFrom",
  "validTo",
  "source",
  "readOn",
  "table",
  "weightUpTo",
  "longest",
  "lengthAndGirth",
  "sides",
  "heaviest",
  "divisor",
  "moreThan",
  "eachSide",
  "sizeWeight",
  "fees",
] as const;

export type CardField = (typeof FIELDS)[number];
export type TypedCard = Readonly<Partial<Record<CardField, string | undefined>>>;

/** Rows of the pasted table are noted with their own number behind this one. */
const TABLE_ROWS = 1_000;

/** A card, or what to mend by field. */
export type CardOfForm =
  | { readonly kind: "card"; readonly sourced: SourcedCard }
  | { readonly kind: "unreadable"; readonly problems: Readonly<Partial<Record<CardField, string>>> };

/**
 * Reads a rate card from the fields of its form, by the same rules as a file of cards.
 *
 * @param typed texts of the fields
 * @param terms measures, currency and names of the zones
 */
export function cardOfForm(
  typed: TypedCard,
  terms: { readonly measures: Measures; readonly currency: string; readonly zones: readonly string[] },
): CardOfForm {
  const problems: Partial<Record<CardField, string>> = {};
  const refuse = (line: number, words: string): null => {
    const field = line > TABLE_ROWS ? "table" : (FIELDS[line] ?? "table");
    const said = line > TABLE_ROWS ? `Row ${line - TABLE_ROWS}: ${words}` : words;
    problems[field] = problems[field] === undefined ? said : `${problems[field]} ${said}`;
    return null;
  };
  const table = tableRows(typed.table ?? "");
  if ("problem" in table) {
    refuse(placeOf("table"), table.problem);
    return { kind: "unreadable", problems };
  }
  const zones = table.zones.map((zone) => zoneNamed(zone, terms.zones) ?? zone);
  for (const words of columnProblems(zones, table.rows, terms.zones)) refuse(placeOf("table"), words);
  for (const { line, cells } of table.rows) {
    if (cells.length > zones.length + 1) {
      const words = `it has ${cells.length - 1} prices for ${zones.length} zones. Give each price a zone in the first row.`;
      refuse(TABLE_ROWS + line, words);
    }
  }
  const fees = feesOf(typed.fees ?? "", zones.length, refuse);
  const rows: CardRows = {
    zones,
    head: partOf(typed, "service", {
      service: "service",
      from: "validFrom",
      to: "validTo",
      source: "source",
      "read on": "readOn",
      weight: "weightUpTo",
    }),
    bands: [bandOf(typed, table.rows, zones.length)],
    size: partOf(typed, "divisor", {
      divisor: "divisor",
      "more than": "moreThan",
      "each side": "eachSide",
      weight: "sizeWeight",
    }),
    fees,
  };
  if (Object.keys(problems).length > 0) return { kind: "unreadable", problems };
  const sourced = cardFromRows(rows, zones, terms, refuse);
  return sourced === null ? { kind: "unreadable", problems } : { kind: "card", sourced };
}

function columnProblems(
  zones: readonly string[],
  rows: readonly TableRow[],
  known: readonly string[],
): string[] {
  return zones.flatMap((zone, at) => {
    if (!known.includes(zone)) return [unknownZoneWords(zone, known)];
    if (zones.indexOf(zone) !== at) return [`Zone ${zone} stands over two columns. Take one of them out.`];
    const isFilled = rows.some(({ cells }) => (cells[at + 1] ?? "") !== "");
    return isFilled ? [] : [`No price stands under ${zone}. Type them, or take the column out.`];
  });
}

function placeOf(field: CardField): number {
  return FIELDS.indexOf(field);
}

/** What the filled fields say of a part. */
function partOf(typed: TypedCard, first: CardField, fields: Readonly<Record<string, CardField>>): SaidPart {
  const said: SaidPart["said"] = new Map();
  for (const [what, field] of Object.entries(fields)) {
    const value = typed[field]?.trim() ?? "";
    if (value !== "") said.set(what, { line: placeOf(field), value, cells: [] });
  }
  return { line: placeOf(first), said };
}

type TableRow = { readonly line: number; readonly cells: readonly string[] };

function bandOf(typed: TypedCard, rows: readonly TableRow[], zoneCount: number): BandRows {
  const part = partOf(typed, "table", {
    "longest side": "longest",
    "length and girth": "lengthAndGirth",
    sides: "sides",
    heaviest: "heaviest",
  });
  const band: BandRows = { ...part, steps: [] };
  for (const { line, cells } of rows) {
    const [weight = "", ...prices] = cells;
    const row = {
      line: TABLE_ROWS + line,
      value: weight.replace(FURTHER_MARK, ""),
      cells: Array.from({ length: zoneCount }, (_, at) => prices[at] ?? ""),
    };
    if (FURTHER_MARK.test(weight)) band.said.set("further", row);
    else band.steps.push(row);
  }
  return band;
}

function feesOf(text: string, zoneCount: number, refuse: (line: number, words: string) => null): FeeRows[] {
  const line = placeOf("fees");
  return text.split(/\r?\n/).flatMap((each) => {
    if (each.trim() === "") return [];
    const rows = feeLineRows(each, line, zoneCount);
    if (!("problem" in rows)) return [rows];
    refuse(line, rows.problem);
    return [];
  });
}
