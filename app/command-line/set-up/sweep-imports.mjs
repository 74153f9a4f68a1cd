import { runTypeScript } from "./run.mjs";

/**
 * Clears what a stopped program left of a half-read import. A look comes first, so that a start with
 * nothing to clear costs no second process.
 *
 * @param {string} file path of the migrated database
 */
export async function sweepImports(file) {
  const { default: Database } = await import("better-sqlite3");
  const db = new Database(file, { readonly: true });
  const left = db
    .prepare(
      `SELECT EXISTS (SELECT 1 FROM "ImportRun" WHERE "state" IN ('reading', 'committing'))
        OR EXISTS (SELECT 1 FROM "StagedRow" s JOIN "ImportRun" r ON r."id" = s."runId" WHERE r."state" != 'ready')`,
    )
    .pluck()
    .get();
  db.close();
  if (left === 1) await runTypeScript("app/command-line/sweep-imports.ts", [file], { output: "stderr" });
}
