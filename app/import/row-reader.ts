import type { Day } from "#lib/units/day";
import { parseMass } from "#lib/units/mass";
import { parseMoney } from "#lib/units/money";
import type { DayFormat, ImportMapping } from "#prisma/records/import/import-mapping";
import type { ImportField, ImportProblem } from "#prisma/records/import/import-problem";
import type { AskedValue, ValueKind, ValueMatch } from "#prisma/records/import/import-values";
import type { ImportedRow } from "#prisma/records/import/stage-rows";
import { dayOf } from "./day-format";

/** What rows are read with. */
export type RowTerms = {
  readonly columns: readonly string[];
  readonly mapping: ImportMapping & { readonly dayFormat: DayFormat };
  readonly match: (kind: ValueKind, text: string) => ValueMatch;
  /** Today in the shop's time zone. */
  readonly today: Day;
  readonly minorDigits: number;
};

/** A row understood, or all that is wrong with it and all that has to be asked. */
export type RowReading =
  | { readonly kind: "row"; readonly row: ImportedRow }
  | {
      readonly kind: "not-yet";
      readonly problems: readonly ImportProblem[];
      readonly asked: readonly AskedValue[];
    };

const MOST_PIECES = 10_000;
/** 2 t: more than any parcel, and within the database's whole numbers. */
const MOST_MILLIGRAMS = 2_000_000_000;
const MOST_MINOR = 2_000_000_000;
const LONGEST_TEXT = 200;
const YES = ["yes", "y", "true", "1", "x"];
const NO = ["no", "n", "false", "0", ""];

/**
 * Reads rows by a mapping. Columns that are not mapped are not looked at.
 *
 * @param terms columns, mapping, known texts and today
 * @returns what a row says, by its line and cells
 */
export function rowReader(terms: RowTerms): (line: number, cells: readonly string[]) => RowReading {
  const { mapping, columns } = terms;
  const indexes = new Map(
    Object.entries(mapping.columns).map(([field, column]) => [field, columns.indexOf(column)] as const),
  );
  return (line, cells) => {
    if (cells.length !== columns.length) {
      const problem = { kind: "row-length" as const, line, cells: cells.length, columns: columns.length };
      return { kind: "not-yet", problems: [problem], asked: [] };
    }
    const cell = (field: ImportField) => cells[indexes.get(field) ?? -1] ?? "";
    return readCells(line, cell, terms);
  };
}

function readCells(line: number, cell: (field: ImportField) => string, terms: RowTerms): RowReading {
  const problems: ImportProblem[] = [];
  const asked: AskedValue[] = [];
  const unreadable = (field: ImportField): null => {
    problems.push({ kind: "unreadable", line, field, value: cell(field).slice(0, LONGEST_TEXT) });
    return null;
  };
  /** A cell that may be empty; `read` gives null for what it cannot read. */
  const optional = <T>(field: ImportField, read: (text: string) => T | null): T | null =>
    cell(field) === "" ? null : (read(cell(field)) ?? unreadable(field));
  const needed = <T>(field: ImportField, read: (text: string) => T | null): T | null => {
    if (cell(field) === "") problems.push({ kind: "missing", line, field });
    return optional(field, read);
  };
  const idOf = (field: ValueKind, isNeeded: boolean): string | null => {
    const text = (isNeeded ? needed : optional)(field, plainText);
    if (text === null) return null;
    const match = terms.match(field, text);
    if (match.kind === "unknown" || (isNeeded && match.kind === "left-out"))
      asked.push({ kind: field, text });
    return match.kind === "known" ? match.id : null;
  };

  const packedOn = needed("packed-day", (text) => dayOf(text, terms.mapping.dayFormat));
  if (packedOn !== null && packedOn > terms.today) {
    problems.push({ kind: "future-day", line, value: cell("packed-day") });
  }
  const orderRef = optional("order", plainText);
  const itemTypeId = idOf("item-type", true);
  const pieces = optional("pieces", piecesOf) ?? 1;
  const zoneId = idOf("zone", false);
  const style = idOf("style", false);
  const cartonId = idOf("carton", false);
  const scale = optional("scale", (text) => scaleOf(text, terms.mapping.scaleUnit));
  const postageMinor = optional("postage", (text) => minorOf(text, terms.minorDigits));
  const unusual = readFlag(cell("unusual")) ?? unreadable("unusual") ?? false;
  if (problems.length > 0 || asked.length > 0 || packedOn === null || itemTypeId === null) {
    return { kind: "not-yet", problems, asked };
  }
  const scaleMg = scale?.mg ?? null;
  const scaleTyped = scale?.typed ?? null;
  const row = { line, packedOn, orderRef, itemTypeId, pieces, zoneId, style, cartonId, scaleMg, scaleTyped };
  return { kind: "row", row: { ...row, postageMinor, unusual } };
}

/** A short text without control signs. */
function plainText(text: string): string | null {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control signs are what this looks for
  return text.length <= LONGEST_TEXT && !/[\u0000-\u001f\u007f]/.test(text) ? text : null;
}

function piecesOf(text: string): number | null {
  const pieces = /^\d{1,6}$/.test(text) ? Number(text) : 0;
  return pieces >= 1 && pieces <= MOST_PIECES ? pieces : null;
}

function scaleOf(text: string, unit: string): { mg: number; typed: string } | null {
  const typed = /^[\d.,]+$/.test(text) ? `${text} ${unit}` : text;
  const reading = parseMass(typed);
  return reading.kind === "mass" && reading.mg <= MOST_MILLIGRAMS ? { mg: reading.mg, typed } : null;
}

function minorOf(text: string, minorDigits: number): number | null {
  const reading = parseMoney(text, minorDigits);
  return reading.kind === "money" && reading.minor <= MOST_MINOR ? reading.minor : null;
}

function readFlag(text: string): boolean | null {
  const word = text.toLowerCase();
  if (YES.includes(word)) return true;
  return NO.includes(word) ? false : null;
}
