import { createHash } from "node:crypto";
import type Database from "better-sqlite3";

/** What a table held: how many rows, and one hash over all of them. */
export type TableDigest = { readonly table: string; readonly rows: number; readonly sha256: string };

/** Tables that are not alike in two databases, with the rows on either side (null: no such table). */
export type TableDifference = {
  readonly table: string;
  readonly rows: number | null;
  readonly otherRows: number | null;
};

/**
 * Digests every table of a database.
 *
 * @param db an open database; inside a transaction the digest is of one moment
 * @returns one digest per table, by name
 */
export function tableDigests(db: Database.Database): TableDigest[] {
  return db
    .prepare<[], string>(
      "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name",
    )
    .pluck()
    .all()
    .map((table) => tableDigest(db, table));
}

function tableDigest(db: Database.Database, table: string): TableDigest {
  const name = `"${table.replaceAll('"', '""')}"`;
  const columns = db.prepare(`SELECT * FROM ${name}`).columns().length;
  const order = Array.from({ length: columns }, (_, index) => index + 1).join(", ");
  const hash = createHash("sha256");
  let rows = 0;
  const all = db.prepare<[], unknown[]>(`SELECT * FROM ${name} ORDER BY ${order}`).safeIntegers().raw();
  for (const row of all.iterate()) {
    hash.update(`${JSON.stringify(row, plainValue)}\n`);
    rows += 1;
  }
  return { table, rows, sha256: hash.digest("hex") };
}

/** Writes whole numbers apart from text that looks like them. */
function plainValue(_key: string, value: unknown): unknown {
  return typeof value === "bigint" ? { whole: value.toString() } : value;
}

/**
 * Says in which tables two databases differ.
 *
 * @param ones digests of one database
 * @param others digests of the other
 * @returns nothing where they hold the same rows in the same tables
 */
export function compareTables(
  ones: readonly TableDigest[],
  others: readonly TableDigest[],
): TableDifference[] {
  const byName = (digests: readonly TableDigest[]) =>
    new Map(digests.map((digest) => [digest.table, digest]));
  const [left, right] = [byName(ones), byName(others)];
  return [...new Set([...left.keys(), ...right.keys()])]
    .filter((table) => left.get(table)?.sha256 !== right.get(table)?.sha256)
    .map((table) => ({
      table,
      rows: left.get(table)?.rows ?? null,
      otherRows: right.get(table)?.rows ?? null,
    }));
}
