import { Readable } from "node:stream";
import { stringify } from "csv-stringify";
import type { Database } from "#prisma/client";
import { Prisma } from "#prisma/generated/client";

/** Rows read at a time: large enough to be quick, small enough that no export fills the memory. */
const ROWS_PER_READ = 2_000;

/** Every table of the database, in the order of the schema. */
export const exportTables: readonly string[] = Object.values(Prisma.ModelName);

/**
 * Says whether a text names a table that can be taken out.
 *
 * @param name as in the address of the export
 * @returns true for the names in `exportTables`
 * @example isExportTable("Movement") // true
 */
export function isExportTable(name: string): boolean {
  return exportTables.includes(name);
}

/**
 * One table as CSV (RFC 4180: commas, CRLF, a header line), read in pieces so that a long ledger
 * never stands in memory as a whole. Values are as stored: amounts in 1/12,000 use unit, values in
 * 1/10,000 minor unit, lengths in micrometres, masses in milligrams; an empty cell is "unknown".
 * A text that a spreadsheet could run as a formula gets an apostrophe before it; numbers stay as they are.
 *
 * @param db the open database
 * @param table one of `exportTables`
 * @returns a stream of text
 * @throws RangeError for a table that is not in the list
 * @see RFC 4180, Common Format and MIME Type for Comma-Separated Values
 * @see OWASP, CSV Injection (from memory): texts that begin with = + - @, a tab or a carriage return
 * @example exportTable(db, "Supply").pipe(file)
 */
export function exportTable(db: Database, table: string): Readable {
  if (!isExportTable(table)) {
    throw new RangeError(`exportTable requires a table of the database, got ${table}`);
  }
  const cells = stringify({
    record_delimiter: "windows",
    cast: { boolean: String, bigint: String },
    escape_formulas: true,
  });
  return Readable.from(tableRows(db, table)).compose(cells);
}

/** The header, then every row in the order in which it was written. */
async function* tableRows(db: Database, table: string): AsyncGenerator<unknown[]> {
  const columns = await tableColumns(db, table);
  yield columns.map((column) => column.name);
  const list = columns.map((column) => `"${column.name}"`).join(", ");
  let after = 0n;
  for (;;) {
    const rows = await db.$queryRawUnsafe<Record<string, unknown>[]>(
      `SELECT rowid AS "_row", ${list} FROM "${table}" WHERE rowid > ? ORDER BY rowid LIMIT ?`,
      after,
      ROWS_PER_READ,
    );
    for (const row of rows) {
      yield columns.map((column) => cell(row[column.name], column.type));
    }
    const last = rows.at(-1);
    if (last === undefined || rows.length < ROWS_PER_READ) {
      return;
    }
    after = BigInt(last["_row"] as bigint | number);
  }
}

type Column = { name: string; type: string };

/** Names and declared types of a table's columns, in the order of the schema. */
async function tableColumns(db: Database, table: string): Promise<Column[]> {
  return db.$queryRawUnsafe<Column[]>(`SELECT name, type FROM pragma_table_info('${table}') ORDER BY cid`);
}

/** SQLite keeps a truth value as 0 or 1; the file says it in a word. */
function cell(value: unknown, type: string): unknown {
  if (type === "BOOLEAN" && value !== null) {
    return value === true || Number(value) === 1;
  }
  return value;
}
