import type { ImportConnection } from "./import-connection";

const CHUNK = 2000;

/**
 * Deletes what a run staged, in short transactions, so that a parcel can be recorded in between.
 *
 * @param db the import's connection
 * @param runId the run
 * @param pause awaited between two transactions
 */
export async function clearStaged(
  db: ImportConnection,
  runId: string,
  pause: () => Promise<void>,
): Promise<void> {
  for (const table of ["StagedUse", "StagedParcel", "StagedRow"]) {
    const remove = db.prepare(
      `DELETE FROM "${table}" WHERE rowid IN (SELECT rowid FROM "${table}" WHERE "runId" = ? LIMIT ${CHUNK})`,
    );
    while (remove.run(runId).changes > 0) await pause();
  }
}
