import { commitImport } from "#prisma/records/import/commit-import";
import { openImportConnection } from "#prisma/records/import/import-connection";
import { committingImports } from "#prisma/records/import/import-runs";

/**
 * Finishes the commits that a stopped program left half way, before anyone asks the books: what the seller
 * said yes to is in them whole.
 *
 * @param databaseFile a migrated database that nothing else has open
 * @param now instant of the start
 * @returns how many were finished
 */
export async function finishCommits(databaseFile: string, now: string): Promise<number> {
  const db = openImportConnection(databaseFile);
  try {
    const runIds = committingImports(db);
    let finished = 0;
    for (const runId of runIds) {
      const outcome = await commitImport(db, runId, {
        device: "import",
        now,
        pause: () => Promise.resolve(),
      });
      if (outcome.kind === "committed") finished += 1;
    }
    return finished;
  } finally {
    db.close();
  }
}
