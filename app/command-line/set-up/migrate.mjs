import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "./root.mjs";
import { runTypeScript } from "./run.mjs";

const FOLDER = join(root, "prisma/migrations");

/**
 * Brings the database up to date. A look at its list of migrations comes first, so that a start with
 * nothing to do costs no second process.
 *
 * @param {string} file
 */
export async function migrate(file) {
  if (await isMigrated(file)) return;
  await runTypeScript("app/command-line/migrate.ts", [file], { output: "stderr" });
}

/** @param {string} file */
async function isMigrated(file) {
  if (!existsSync(file)) return false;
  const { default: Database } = await import("better-sqlite3");
  const db = new Database(file, { readonly: true });
  try {
    const table = db.prepare("SELECT 1 FROM sqlite_schema WHERE name = '_prisma_migrations'").get();
    if (table === undefined) return false;
    const recorded = db
      .prepare(
        "SELECT migration_name || ' ' || checksum FROM _prisma_migrations " +
          "WHERE finished_at IS NOT NULL AND rolled_back_at IS NULL ORDER BY migration_name",
      )
      .pluck()
      .all();
    return recorded.join("\n") === listedMigrations().join("\n");
  } finally {
    db.close();
  }
}

function listedMigrations() {
  return readdirSync(FOLDER, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort()
    .map((name) => {
      const sql = readFileSync(join(FOLDER, name, "migration.sql"));
      return `${name} ${createHash("sha256").update(sql).digest("hex")}`;
    });
}
