import { createHash } from "node:crypto";
import { csvRecords, decodedText } from "./csv-records";
import { type Delimiter, delimiterOf } from "./delimiter";
import { type FileEncoding, fileEncoding } from "./file-encoding";

/** How a file is written, the names of its columns and its first rows. */
export type FileHead =
  | {
      readonly kind: "head";
      readonly encoding: FileEncoding;
      readonly delimiter: Delimiter;
      readonly columns: readonly string[];
      readonly headerHash: string;
      readonly sample: readonly (readonly string[])[];
    }
  | { readonly kind: "not-text"; readonly reason: "empty" | "spreadsheet" | "binary" | "broken-utf-16" }
  | { readonly kind: "broken"; readonly line: number; readonly reason: "quotes" | "too-long" };

const SAMPLE_ROWS = 200;
const SNIFFED_CHARACTERS = 65_536;

/**
 * Looks at the beginning of a file.
 *
 * @param path of the file
 */
export async function fileHead(path: string): Promise<FileHead> {
  const found = await fileEncoding(path);
  if (found.kind === "not-text") return found;
  const delimiter = delimiterOf(await startOf(path, found.encoding));
  const rows: (readonly string[])[] = [];
  for await (const record of csvRecords(path, { encoding: found.encoding, delimiter })) {
    if (record.kind === "broken" && rows.length === 0) return record;
    if (record.kind === "broken" || rows.length > SAMPLE_ROWS) break;
    rows.push(record.cells);
  }
  const [header, ...sample] = rows;
  if (header === undefined) return { kind: "not-text", reason: "empty" };
  const headerHash = createHash("sha256").update(JSON.stringify(header)).digest("hex");
  return {
    kind: "head",
    encoding: found.encoding,
    delimiter,
    columns: columnNames(header),
    headerHash,
    sample,
  };
}

/** Names without doubles: a second "note" is "note (2)", a column without a name "column 3". */
function columnNames(header: readonly string[]): string[] {
  const names: string[] = [];
  for (const [index, cell] of header.entries()) {
    const name = cell === "" ? `column ${index + 1}` : cell;
    let unique = name;
    for (let times = 2; names.includes(unique); times += 1) unique = `${name} (${times})`;
    names.push(unique);
  }
  return names;
}

async function startOf(path: string, encoding: FileEncoding): Promise<string> {
  let start = "";
  for await (const text of decodedText(path, encoding)) {
    start += text;
    if (start.length >= SNIFFED_CHARACTERS) break;
  }
  return start.slice(0, SNIFFED_CHARACTERS);
}
