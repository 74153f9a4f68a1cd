import { createHash, randomUUID } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import Database from "better-sqlite3";

const MIGRATIONS_FOLDER = "prisma/migrations";
const BUSY_TIMEOUT_MS = 15_000;

/** The table that Prisma's own command keeps, so that a user who has the full command can go on with it. */
const MIGRATIONS_TABLE = `CREATE TABLE IF NOT EXISTS "_prisma_migrations" (
    "id"                    TEXT PRIMARY KEY NOT NULL,
    "checksum"              TEXT NOT NULL,
    "finished_at"           DATETIME,
    "migration_name"        TEXT NOT NULL,
    "logs"                  TEXT,
    "rolled_back_at"        DATETIME,
    "started_at"            DATETIME NOT NULL DEFAULT current_timestamp,
    "applied_steps_count"   INTEGER UNSIGNED NOT NULL DEFAULT 0
)`;

export type MigrationRefusal = "changed" | "newer" | "unfinished" | "not-ours" | "broken-references";

/** A database that must not be migrated; the message says what to do. */
export class MigrationRefused extends Error {
  readonly kind: MigrationRefusal;

  constructor(kind: MigrationRefusal, message: string) {
    super(message);
    this.name = "MigrationRefused";
    this.kind = kind;
  }
}

export type MigrateOptions = {
  /** Folder with one folder per migration, each holding migration.sql. */
  readonly folder?: string;
  /** When this run happens: goes into the records and the name of the copy. */
  readonly now?: Date;
};

export type MigrateResult = {
  /** Names applied in this run, oldest first. */
  readonly applied: readonly string[];
  /** Path of the copy made before the first of them; null where there was nothing to copy. */
  readonly copy: string | null;
};

type Migration = { readonly name: string; readonly sql: string; readonly checksum: string };
type Recorded = {
  readonly migration_name: string;
  readonly checksum: string;
  readonly finished_at: number | string | null;
};

/**
 * Brings a database file up to the newest migration, one transaction per migration file.
 * An existing database is copied beside itself first, and never touched where its history does not fit.
 *
 * @param file path of the SQLite file; made where it is missing
 * @returns what was applied, and the copy
 * @throws MigrationRefused when the database is newer than the program, a migration was changed since it
 *   was applied, one stopped half way, or the file belongs to something else
 */
export function migrateDatabase(file: string, options: MigrateOptions = {}): MigrateResult {
  const now = options.now ?? new Date();
  const migrations = readMigrations(options.folder ?? MIGRATIONS_FOLDER);
  mkdirSync(dirname(resolve(file)), { recursive: true });
  const db = new Database(file, { timeout: BUSY_TIMEOUT_MS });
  try {
    db.pragma("journal_mode = wal");
    db.pragma("synchronous = full");
    const pending = pendingMigrations(db, migrations);
    const first = pending[0];
    if (first === undefined) return { applied: [], copy: null };
    const copy = hasTables(db) ? copyBefore(db, file, first.name, now) : null;
    const applied = pending.filter((migration) => applyMigration(db, migrations, migration, now));
    return { applied: applied.map((migration) => migration.name), copy };
  } finally {
    db.close();
  }
}

function readMigrations(folder: string): Migration[] {
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort()
    .map((name) => {
      const sql = readFileSync(join(folder, name, "migration.sql"));
      return { name, sql: sql.toString("utf8"), checksum: createHash("sha256").update(sql).digest("hex") };
    });
}

/** What is still to apply, after every reason to refuse has been looked at. */
function pendingMigrations(db: Database.Database, migrations: readonly Migration[]): Migration[] {
  const recorded = recordedMigrations(db);
  const known = new Map(migrations.map((migration) => [migration.name, migration]));
  for (const { migration_name: name, checksum, finished_at } of recorded) {
    const migration = known.get(name);
    if (migration === undefined) {
      throw new MigrationRefused(
        "newer",
        `This database knows the migration ${name}, which this version of the program does not. ` +
          "It was used by a newer version: start that one, or restore an older backup. Nothing was changed.",
      );
    }
    if (finished_at === null) {
      throw new MigrationRefused(
        "unfinished",
        `The migration ${name} was begun by another tool and did not finish. ` +
          "Restore the copy made before it. Nothing was changed.",
      );
    }
    if (migration.checksum !== checksum) {
      throw new MigrationRefused(
        "changed",
        `The file of migration ${name} is not the one that was applied to this database. ` +
          "Put the original file back. Nothing was changed.",
      );
    }
  }
  const done = new Set(recorded.map((row) => row.migration_name));
  return migrations.filter((migration) => !done.has(migration.name));
}

function recordedMigrations(db: Database.Database): Recorded[] {
  if (!tableNames(db).includes("_prisma_migrations")) {
    if (hasTables(db)) {
      throw new MigrationRefused(
        "not-ours",
        "This file holds tables but no record of migrations, so it is not a database of this program. " +
          "Choose another file. Nothing was changed.",
      );
    }
    return [];
  }
  return db
    .prepare<[], Recorded>(
      'SELECT migration_name, checksum, finished_at FROM "_prisma_migrations" ' +
        "WHERE rolled_back_at IS NULL ORDER BY migration_name",
    )
    .all();
}

function tableNames(db: Database.Database): string[] {
  return db
    .prepare<[], { name: string }>("SELECT name FROM sqlite_schema WHERE type = 'table'")
    .all()
    .map((row) => row.name);
}

function hasTables(db: Database.Database): boolean {
  return tableNames(db).some((name) => name !== "_prisma_migrations" && !name.startsWith("sqlite_"));
}

function copyBefore(db: Database.Database, file: string, migration: string, now: Date): string {
  const stamp = now.toISOString().replace(/[-:]/g, "").replace(".", "");
  const copy = join(dirname(resolve(file)), `before-${migration}-${stamp}.db`);
  if (existsSync(copy)) throw new Error(`A copy named ${copy} exists already; move it away and start again`);
  db.prepare("VACUUM INTO ?").run(copy);
  return copy;
}

/** Applies one migration; false where another process did so in the meantime. */
function applyMigration(
  db: Database.Database,
  migrations: readonly Migration[],
  migration: Migration,
  now: Date,
): boolean {
  // A migration may rebuild a table: foreign keys rest meanwhile and are checked before the commit.
  db.pragma("foreign_keys = off");
  const apply = db.transaction((): boolean => {
    if (!pendingMigrations(db, migrations).some((open) => open.name === migration.name)) return false;
    db.exec(MIGRATIONS_TABLE);
    db.exec(migration.sql);
    const broken = db.pragma("foreign_key_check");
    if (Array.isArray(broken) && broken.length > 0) {
      throw new MigrationRefused(
        "broken-references",
        `After migration ${migration.name}, ${broken.length} rows would point at rows that are not there. ` +
          "It was undone and nothing was changed.",
      );
    }
    db.prepare(
      'INSERT INTO "_prisma_migrations" ' +
        "(id, checksum, migration_name, started_at, finished_at, applied_steps_count) VALUES (?, ?, ?, ?, ?, 1)",
    ).run(randomUUID(), migration.checksum, migration.name, now.getTime(), now.getTime());
    return true;
  });
  return apply.immediate();
}
