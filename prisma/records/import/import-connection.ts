import Database from "better-sqlite3";

/** A connection of an import's own, beside the ones of the server. */
export type ImportConnection = Database.Database;

const BUSY_TIMEOUT_MS = 5000;

/**
 * Opens a migrated database for an import.
 *
 * @param file path of the SQLite file, which must be there
 * @returns the connection; the caller closes it
 */
export function openImportConnection(file: string): ImportConnection {
  const db = new Database(file, { timeout: BUSY_TIMEOUT_MS, fileMustExist: true });
  db.pragma("journal_mode = wal");
  db.pragma("foreign_keys = on");
  db.pragma("synchronous = full");
  return db;
}
