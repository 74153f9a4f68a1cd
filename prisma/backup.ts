import { copyFileSync, existsSync, mkdirSync, renameSync, rmSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import Database from "better-sqlite3";
import { compareTables, type TableDigest, tableDigests } from "#prisma/table-digests";

const BUSY_TIMEOUT_MS = 15_000;

export type BackupResult =
  | { readonly kind: "backed-up"; readonly file: string; readonly tables: readonly TableDigest[] }
  | { readonly kind: "target-exists"; readonly file: string }
  | { readonly kind: "no-database"; readonly file: string };

export type RestoreResult =
  | {
      readonly kind: "restored";
      readonly tables: readonly TableDigest[];
      /** Where the database that stood there before was put; null where there was none. */
      readonly replaced: string | null;
    }
  | { readonly kind: "no-backup"; readonly file: string }
  | { readonly kind: "unreadable"; readonly file: string; readonly reason: string }
  | { readonly kind: "in-use"; readonly file: string };

/**
 * Copies a database to a new file, also while the program is running: the copy is what the database held
 * at one moment, and is read back and compared with that moment before it is called a backup.
 *
 * @param from path of the database
 * @param to path of the new file
 * @returns the tables of the backup, or why there is none
 * @throws Error when the copy is not equal to the original; the copy is removed
 */
export async function backupDatabase(from: string, to: string): Promise<BackupResult> {
  if (!existsSync(from)) return { kind: "no-database", file: from };
  if (existsSync(to)) return { kind: "target-exists", file: to };
  mkdirSync(dirname(resolve(to)), { recursive: true });
  const partial = `${to}.partial`;
  rmSync(partial, { force: true });
  const source = new Database(from, { readonly: true, timeout: BUSY_TIMEOUT_MS });
  try {
    // One read transaction around copy and digest: later writes belong to neither.
    source.exec("BEGIN");
    const expected = tableDigests(source);
    await source.backup(partial);
    source.exec("COMMIT");
    const tables = settle(partial);
    const differences = compareTables(expected, tables);
    if (differences.length > 0) {
      throw new Error(
        `The backup differs from the database in ${differences.map((d) => d.table).join(", ")}`,
      );
    }
    renameSync(partial, to);
    return { kind: "backed-up", file: to, tables };
  } finally {
    source.close();
    rmSync(partial, { force: true });
  }
}

/**
 * Puts a backup in the place of a database that no program has open. The database that stood there is kept
 * beside it.
 *
 * @param backup path of the backup
 * @param file path of the database
 * @param now when this happens: goes into the name of the one that is kept
 * @returns the tables now in place, or why nothing was changed
 * @throws Error when the restored database is not equal to the backup
 */
export function restoreDatabase(backup: string, file: string, now: Date): RestoreResult {
  if (!existsSync(backup)) return { kind: "no-backup", file: backup };
  const checked = readBackup(backup);
  if (checked.kind === "unreadable") return checked;
  if (existsSync(file) && isInUse(file)) return { kind: "in-use", file };
  mkdirSync(dirname(resolve(file)), { recursive: true });
  const partial = `${file}.partial`;
  copyFileSync(backup, partial);
  const tables = settle(partial);
  if (compareTables(checked.tables, tables).length > 0) {
    rmSync(partial, { force: true });
    throw new Error("The copy of the backup differs from the backup; the database was not changed");
  }
  const replaced = existsSync(file) ? putAside(file, now) : null;
  renameSync(partial, file);
  return { kind: "restored", tables, replaced };
}

/** Makes a copy one whole file (no write-ahead log beside it) and reads it through. */
function settle(file: string): TableDigest[] {
  const db = new Database(file);
  try {
    db.pragma("journal_mode = delete");
    const health = db.pragma("integrity_check", { simple: true });
    if (health !== "ok") throw new Error(`The copy is damaged: ${String(health)}`);
    return tableDigests(db);
  } finally {
    db.close();
  }
}

type ReadBackup =
  | { readonly kind: "read"; readonly tables: readonly TableDigest[] }
  | { readonly kind: "unreadable"; readonly file: string; readonly reason: string };

function readBackup(file: string): ReadBackup {
  let db: Database.Database | null = null;
  try {
    db = new Database(file, { readonly: true });
    const health = String(db.pragma("integrity_check", { simple: true }));
    if (health !== "ok") return { kind: "unreadable", file, reason: health };
    const tables = tableDigests(db);
    if (tables.some(({ table }) => table === "_prisma_migrations")) return { kind: "read", tables };
    return { kind: "unreadable", file, reason: "it is not a database of this program" };
  } catch (error) {
    if (error instanceof Database.SqliteError) return { kind: "unreadable", file, reason: error.message };
    throw error;
  } finally {
    db?.close();
  }
}

/** A database in write-ahead mode can leave it only when nobody else has it open. */
function isInUse(file: string): boolean {
  const db = new Database(file, { timeout: 0 });
  try {
    return db.pragma("journal_mode = delete", { simple: true }) !== "delete";
  } catch (error) {
    if (error instanceof Database.SqliteError && error.code.startsWith("SQLITE_BUSY")) return true;
    if (error instanceof Database.SqliteError && error.code === "SQLITE_NOTADB") return false;
    throw error;
  } finally {
    db.close();
  }
}

function putAside(file: string, now: Date): string {
  const stamp = now.toISOString().replace(/[-:]/g, "").replace(".", "");
  const replaced = join(dirname(resolve(file)), `replaced-${stamp}.db`);
  renameSync(file, replaced);
  return replaced;
}
