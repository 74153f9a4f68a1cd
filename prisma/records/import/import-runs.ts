import { randomUUID } from "node:crypto";
import type { ImportConnection } from "./import-connection";
import type { ImportProblems } from "./import-problem";

/**
 * Where a run stands: uploaded (columns not yet chosen), reading, asking (texts that the shop does not
 * know), ready (waiting for a yes), committing, committed, refused, cancelled.
 */
export type ImportState =
  | "uploaded"
  | "reading"
  | "asking"
  | "ready"
  | "committing"
  | "committed"
  | "refused"
  | "cancelled";

/** One import of one file. */
export type ImportRun = {
  readonly id: string;
  readonly source: string;
  readonly fileName: string;
  readonly fileHash: string;
  readonly state: ImportState;
  readonly startedAt: string;
  readonly finishedAt: string | null;
  readonly rowsRead: number;
  readonly newParcels: number;
  readonly sameParcels: number;
  readonly changedParcels: number;
  readonly problems: ImportProblems | null;
};

type RunRow = Omit<ImportRun, "problems"> & { readonly problem: string | null };

/**
 * Notes a file that is to be imported.
 *
 * @param db the import's connection
 * @param file name, fingerprint and source of the file
 * @param now instant of the upload
 * @returns the run's id
 */
export function createImportRun(
  db: ImportConnection,
  file: { readonly source: string; readonly fileName: string; readonly fileHash: string },
  now: string,
): string {
  const id = randomUUID();
  db.prepare(
    `INSERT INTO "ImportRun" ("id", "source", "fileName", "fileHash", "state", "startedAt")
     VALUES (?, ?, ?, ?, 'uploaded', ?)`,
  ).run(id, file.source, file.fileName, file.fileHash, now);
  return id;
}

/** The run, or null where there is none. */
export function importRunOf(db: ImportConnection, runId: string): ImportRun | null {
  const row = db.prepare<[string], RunRow>(`SELECT * FROM "ImportRun" WHERE "id" = ?`).get(runId);
  return row === undefined ? null : runOfRow(row);
}

/** The newest runs, newest first. */
export function importRunsOf(db: ImportConnection, limit: number): ImportRun[] {
  return db
    .prepare<[number], RunRow>(`SELECT * FROM "ImportRun" ORDER BY "startedAt" DESC, "id" LIMIT ?`)
    .all(limit)
    .map(runOfRow);
}

/** When the very same file was imported before, or null. */
export function importedBefore(db: ImportConnection, run: ImportRun): string | null {
  const row = db
    .prepare<[string, string, string], { finishedAt: string }>(
      `SELECT "finishedAt" FROM "ImportRun"
       WHERE "fileHash" = ? AND "source" = ? AND "state" = 'committed' AND "id" <> ?
       ORDER BY "finishedAt" DESC LIMIT 1`,
    )
    .get(run.fileHash, run.source, run.id);
  return row?.finishedAt ?? null;
}

/** Moves a run to another state; `finishedAt` where it ends there. */
export function setImportState(
  db: ImportConnection,
  runId: string,
  state: ImportState,
  finishedAt: string | null = null,
): void {
  db.prepare(`UPDATE "ImportRun" SET "state" = ?, "finishedAt" = ?, "problem" = NULL WHERE "id" = ?`).run(
    state,
    finishedAt,
    runId,
  );
}

/** Notes how many rows have been read so far. */
export function setRowsRead(db: ImportConnection, runId: string, rowsRead: number): void {
  db.prepare(`UPDATE "ImportRun" SET "rowsRead" = ? WHERE "id" = ?`).run(rowsRead, runId);
}

/** Ends a run as refused, with its reasons. */
export function refuseImport(
  db: ImportConnection,
  runId: string,
  problems: ImportProblems,
  now: string,
): void {
  db.prepare(
    `UPDATE "ImportRun" SET "state" = 'refused', "finishedAt" = ?, "problem" = ? WHERE "id" = ?`,
  ).run(now, JSON.stringify(problems), runId);
}

function runOfRow({ problem, ...run }: RunRow): ImportRun {
  return { ...run, problems: problem === null ? null : (JSON.parse(problem) as ImportProblems) };
}

/** Marks a run as ready for its yes, with the counts of its staged parcels. */
export function setImportReady(db: ImportConnection, runId: string): void {
  db.prepare(
    `UPDATE "ImportRun" SET "state" = 'ready', "problem" = NULL,
       "newParcels" = (SELECT COUNT(*) FROM "StagedParcel" WHERE "runId" = :runId AND "fate" = 'new'),
       "sameParcels" = (SELECT COUNT(*) FROM "StagedParcel" WHERE "runId" = :runId AND "fate" IN ('same', 'kept')),
       "changedParcels" = (SELECT COUNT(*) FROM "StagedParcel" WHERE "runId" = :runId AND "fate" = 'changed')
     WHERE "id" = :runId`,
  ).run({ runId });
}
