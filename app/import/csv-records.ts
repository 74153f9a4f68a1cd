import { createReadStream } from "node:fs";
import { Readable } from "node:stream";
import { CsvError, parse } from "csv-parse";
import type { Delimiter } from "./delimiter";
import type { FileEncoding } from "./file-encoding";

/** A row of the file, or where the file stops being readable. `line` is the row's last line, from 1. */
export type CsvRecord =
  | { readonly kind: "record"; readonly line: number; readonly cells: readonly string[] }
  | { readonly kind: "broken"; readonly line: number; readonly reason: "quotes" | "too-long" };

/** A row longer than this is a quotation mark that nobody closed. */
const LONGEST_RECORD = 1_000_000;

type Parsed = { readonly info: { readonly lines: number }; readonly record: readonly string[] };

/**
 * Reads a file row by row, never more of it than a few pieces at a time. Empty rows are left out.
 *
 * @param path of the file
 * @param form its encoding and delimiter
 * @returns rows in order; a broken one is the last
 */
export async function* csvRecords(
  path: string,
  form: { readonly encoding: FileEncoding; readonly delimiter: Delimiter },
): AsyncGenerator<CsvRecord> {
  const parser = parse({
    delimiter: form.delimiter,
    info: true,
    max_record_size: LONGEST_RECORD,
    record_delimiter: ["\r\n", "\n", "\r"],
    relax_column_count: true,
    skip_empty_lines: true,
  });
  const text = Readable.from(decodedText(path, form.encoding));
  text.on("error", (error) => parser.destroy(error));
  try {
    for await (const { info, record } of text.pipe(parser) as AsyncIterable<Parsed>) {
      const cells = record.map((cell) => cell.trim());
      if (cells.some((cell) => cell !== "")) yield { kind: "record", line: info.lines, cells };
    }
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const reason = error.code === "CSV_MAX_RECORD_SIZE" ? "too-long" : "quotes";
    yield { kind: "broken", line: parser.info.lines, reason };
  } finally {
    text.destroy();
  }
}

/** The text of a file, piece by piece, without its byte order mark. */
export async function* decodedText(path: string, encoding: FileEncoding): AsyncGenerator<string> {
  const decoder = new TextDecoder(encoding, { fatal: true });
  for await (const chunk of createReadStream(path) as AsyncIterable<Buffer>) {
    const text = decoder.decode(chunk, { stream: true });
    if (text !== "") yield text;
  }
  const rest = decoder.decode();
  if (rest !== "") yield rest;
}
