import { type Database, inTransaction } from "../../client";

const CHUNK = 2000;

/**
 * Cancels the imports that a stopped program left half-read and deletes what they staged: the ledger never
 * saw them. A commit that was stopped is no matter of this sweep, it is finished.
 *
 * @param db the database, at the start of the program
 * @returns how many runs were cancelled
 */
export async function sweepUnfinishedImports(db: Database): Promise<number> {
  const cancelled = await inTransaction(
    db,
    (tx) => tx.$executeRaw`UPDATE "ImportRun" SET "state" = 'cancelled' WHERE "state" = 'reading'`,
  );
  let removed = 1;
  while (removed > 0) removed = await inTransaction(db, removeChunk);
  return cancelled;
}

/** Deletes a chunk of staged rows of runs that ended; the last to go are the rows of the file. */
async function removeChunk(tx: Parameters<Parameters<typeof inTransaction>[1]>[0]): Promise<number> {
  const uses = await tx.$executeRaw`
    DELETE FROM "StagedUse" WHERE rowid IN (SELECT s.rowid FROM "StagedUse" s JOIN "ImportRun" r ON r."id" = s."runId"
      WHERE r."state" IN ('committed', 'refused', 'cancelled') LIMIT ${CHUNK})`;
  const parcels = await tx.$executeRaw`
    DELETE FROM "StagedParcel" WHERE rowid IN (SELECT s.rowid FROM "StagedParcel" s JOIN "ImportRun" r ON r."id" = s."runId"
      WHERE r."state" IN ('committed', 'refused', 'cancelled') LIMIT ${CHUNK})`;
  const rows = await tx.$executeRaw`
    DELETE FROM "StagedRow" WHERE rowid IN (SELECT s.rowid FROM "StagedRow" s JOIN "ImportRun" r ON r."id" = s."runId"
      WHERE r."state" IN ('committed', 'refused', 'cancelled') LIMIT ${CHUNK})`;
  return uses + parcels + rows;
}
