import { CARD_COLUMNS, type CardRow, type RowProblem } from "#lib/postage/card-rows/card-row";

/** A row that says something: its value, and the cells under the zones. */
export type SaidRow = { readonly line: number; readonly value: string; readonly cells: readonly string[] };

/** What was said of one part of a card, by what it is about. */
export type SaidPart = { readonly line: number; readonly said: Map<string, SaidRow> };

/** An amount of a fee: up to a weight, or for any. */
export type AmountRow = SaidRow & { readonly isAnyWeight: boolean };

export type BandRows = SaidPart & { readonly steps: SaidRow[] };
export type FeeRows = SaidPart & { readonly amounts: AmountRow[] };

/** The rows of one card, part by part. */
export type CardRows = {
  /** over its columns, from the head row above it */
  readonly zones: readonly string[];
  readonly head: SaidPart;
  readonly bands: BandRows[];
  readonly size: SaidPart;
  readonly fees: FeeRows[];
};

/** What each kind of row may be about; where `underZones`, the cells under the zones belong to it. */
const KNOWN: Readonly<
  Record<string, { readonly plain: readonly string[]; readonly underZones: readonly string[] }>
> = {
  card: { plain: ["service", "from", "to", "currency", "source", "read on", "weight"], underZones: [] },
  band: {
    plain: ["name", "longest side", "length and girth", "sides", "heaviest", "by size"],
    underZones: [],
  },
  step: { plain: [], underZones: ["up to"] },
  further: { plain: [], underZones: ["each"] },
  size: {
    plain: ["divisor", "more than", "each side", "weight", "no box", "at most"],
    underZones: ["zones"],
  },
  fee: {
    plain: ["name", "from", "to", "longest side over", "second side over", "but not over", "volume over"],
    underZones: ["up to", "any weight"],
  },
};
const KINDS = Object.keys(KNOWN);
const [HEAD_MARK] = CARD_COLUMNS;
const NO_CARD = "it belongs to no card. Begin a card with: card, service, its name.";

/** The rows of a file, put together. */
export type GroupedRows = {
  readonly cards: CardRows[];
  /** head rows with the zones over the columns */
  readonly heads: { readonly line: number; readonly zones: readonly string[] }[];
  readonly problems: RowProblem[];
};

/**
 * Puts rows together to cards and their parts; their values are not looked at yet.
 *
 * @param rows of a file, a head row first
 * @returns cards in order, and what is wrong with rows that belong nowhere
 */
export function groupedRows(rows: readonly CardRow[]): GroupedRows {
  const grouped: GroupedRows = { cards: [], heads: [], problems: [] };
  let card: CardRows | null = null;
  for (const { line, cells } of rows) {
    const [kind = "", what = "", value = "", ...others] = cells.map((cell) => cell.trim());
    const row = { line, kind: kind.toLowerCase(), what: what.toLowerCase(), value, others };
    if (row.kind === HEAD_MARK) {
      grouped.heads.push({ line, zones: withoutEmptyEnd(others) });
      card = null;
      continue;
    }
    const zones = grouped.heads.at(-1)?.zones;
    if (zones === undefined) {
      const words = `the first row names the columns: ${CARD_COLUMNS.join(", ")}, then your zones. Put it on top.`;
      return { ...grouped, problems: [{ line, words }] };
    }
    if (row.kind === "card" && row.what === "service") {
      card = newCard(line, zones);
      grouped.cards.push(card);
    }
    const words = card === null ? NO_CARD : (rowProblem(row, zones.length) ?? placed(row, card));
    if (words !== null) grouped.problems.push({ line, words });
  }
  return grouped;
}

type WholeRow = {
  readonly line: number;
  readonly kind: string;
  readonly what: string;
  readonly value: string;
  readonly others: readonly string[];
};

function newCard(line: number, zones: readonly string[]): CardRows {
  const part = (): SaidPart => ({ line, said: new Map() });
  return { zones, head: part(), bands: [], size: part(), fees: [] };
}

function rowProblem({ kind, what, others }: WholeRow, zoneCount: number): string | null {
  const known = KNOWN[kind];
  if (known === undefined) {
    return `“${kind}” is no kind of row. Write ${KINDS.join(", ")}, or ${HEAD_MARK} for the names of the columns.`;
  }
  if (![...known.plain, ...known.underZones].includes(what)) {
    return `“${what}” is nothing that a row ${kind} says. Write ${[...known.plain, ...known.underZones].join(", ")}.`;
  }
  if (others.slice(zoneCount).some((cell) => cell !== "")) {
    return "it has more cells than the head row. Name a zone over each column of prices.";
  }
  if (known.plain.includes(what) && others.some((cell) => cell !== "")) {
    return `cells under the zones say nothing in a row ${kind}, ${what}. Leave them empty.`;
  }
  return null;
}

/** Puts a row where it belongs; says what is wrong if there is no place for it. */
function placed({ line, kind, what, value, others }: WholeRow, card: CardRows): string | null {
  const cells = card.zones.map((_, at) => others[at] ?? "");
  const row = { line, value, cells };
  switch (kind) {
    case "card":
      return saidOnce(card.head, what, row);
    case "size":
      return saidOnce(card.size, what, row);
    case "fee":
      return placedFee(card, what, row);
    default:
      return placedInBand(card, kind, what, row);
  }
}

function placedInBand(card: CardRows, kind: string, what: string, row: SaidRow): string | null {
  const isNew = kind === "band" && what === "name";
  let band = isNew ? undefined : card.bands.at(-1);
  if (band === undefined) {
    band = { line: row.line, said: new Map(), steps: [] };
    card.bands.push(band);
  }
  if (kind === "further") return saidOnce(band, "further", row);
  if (kind === "band") return saidOnce(band, what, row);
  band.steps.push(row);
  return null;
}

function placedFee(card: CardRows, what: string, row: SaidRow): string | null {
  if (what === "name") {
    card.fees.push({ line: row.line, said: new Map([[what, row]]), amounts: [] });
    return null;
  }
  const fee = card.fees.at(-1);
  if (fee === undefined) return "it belongs to no fee. Begin a fee with: fee, name, its name.";
  if (what !== "up to" && what !== "any weight") return saidOnce(fee, what, row);
  fee.amounts.push({ ...row, isAnyWeight: what === "any weight" });
  return null;
}

function saidOnce({ said }: SaidPart, what: string, row: SaidRow): string | null {
  const before = said.get(what);
  if (before !== undefined) return `“${what}” stands in row ${before.line} already. Take one of them out.`;
  said.set(what, row);
  return null;
}

function withoutEmptyEnd(cells: readonly string[]): string[] {
  return cells.slice(0, cells.findLastIndex((cell) => cell !== "") + 1);
}
