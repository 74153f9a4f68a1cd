import { CsvError, parse } from "csv-parse/sync";
import type { CardRow } from "#lib/postage/card-rows/card-row";
import { delimiterOf } from "../import/delimiter";

/** Rows of a CSV text, or why it can't be read. */
export type CsvRows =
  | { readonly kind: "rows"; readonly rows: readonly CardRow[] }
  | { readonly kind: "unreadable"; readonly words: string };

/** A record as csv-parse gives it with its place. */
type Parsed = { readonly info: { readonly lines: number }; readonly record: readonly string[] };

/** Spreadsheets set it before a text that could be taken for a formula; it is no part of the text. */
const FORMULA_GUARD = /^'(?=[=+\-@])/;
const BYTE_ORDER_MARK = /^\uFEFF/;
const SNIFFED_CHARACTERS = 65_536;

/**
 * Reads a small CSV file whole. UTF-8, else Windows-1252 as older spreadsheets write it.
 *
 * @param bytes of the file
 * @returns rows with the line where each begins; empty rows are left out
 */
export function csvRowsOf(bytes: Uint8Array): CsvRows {
  if (bytes.some(isControl)) {
    return {
      kind: "unreadable",
      words: "This is not a text file that can be read here. Save it as “CSV UTF-8”, then choose that file.",
    };
  }
  const text = textOf(bytes).replace(BYTE_ORDER_MARK, "");
  let readTo = 0;
  try {
    const records = parse(text, {
      delimiter: delimiterOf(text.slice(0, SNIFFED_CHARACTERS)),
      info: true,
      on_record: (record: string[], { lines }) => {
        readTo = lines;
        return record;
      },
      relax_column_count: true,
      record_delimiter: ["\r\n", "\n", "\r"],
    }) as unknown as readonly Parsed[];
    const rows = records.flatMap(({ info, record }) => {
      const cells = record.map((cell) => cell.trim().replace(FORMULA_GUARD, ""));
      return cells.some((cell) => cell !== "") ? [{ line: info.lines, cells }] : [];
    });
    return { kind: "rows", rows };
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    return {
      kind: "unreadable",
      words: `Row ${readTo + 1}: a quotation mark stands inside a cell or is never closed. Write the cell in quotation marks and double those inside it. Nothing was kept.`,
    };
  }
}

/** Other than tabs, ends of lines and form feeds: no text holds one. */
function isControl(byte: number): boolean {
  return byte < 0x20 && !(byte >= 0x09 && byte <= 0x0d);
}

function textOf(bytes: Uint8Array): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    return new TextDecoder("windows-1252").decode(bytes);
  }
}
