import { existsSync, readdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { runTypeScript } from "./run.mjs";

const STAGED = ["StagedRow", "StagedParcel", "StagedUse"];

/**
 * Finishes an import whose booking a stopped program left half way, and clears what is left of a half-read
 * one, its file as well. A look comes first, so that a
 * start with nothing to clear costs no second process.
 *
 * @param {string} file path of the migrated database
 */
export async function sweepImports(file) {
  const { default: Database } = await import("better-sqlite3");
  const db = new Database(file, { readonly: true });
  const staged = STAGED.map(
    (table) => `EXISTS (SELECT 1 FROM "${table}" s JOIN "ImportRun" r ON r."id" = s."runId"
      WHERE r."state" IN ('committed', 'refused', 'cancelled'))`,
  );
  const left = db
    .prepare(
      `SELECT EXISTS (SELECT 1 FROM "ImportRun" WHERE "state" IN ('reading', 'committing'))
        OR ${staged.join(" OR ")}`,
    )
    .pluck()
    .get();
  const waiting = db
    .prepare(`SELECT "id" || '.csv' FROM "ImportRun" WHERE "state" IN ('uploaded', 'asking', 'ready')`)
    .pluck()
    .all();
  db.close();
  const folder = join(dirname(file), "imports");
  const files = existsSync(folder) ? readdirSync(folder) : [];
  if (left === 1 || files.some((name) => !waiting.includes(name)))
    await runTypeScript("app/command-line/sweep-imports.ts", [file], { output: "stderr" });
}
