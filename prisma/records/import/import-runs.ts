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
 * @param file name, fingerprint and source of the file; `id` where the run's id is already given out
 * @param now instant of the upload
 * @returns the run's id
 */
export function createImportRun(
  db: ImportConnection,
  file: {
    readonly id?: string;
    readonly source: string;
    readonly fileName: string;
    readonly fileHash: string;
  },
  now: string,
): string {
  const { id = randomUUID() } = file;
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

/** Ids of the runs that wait for an answer, and so still need their file. */
export function waitingImports(db: ImportConnection): string[] {
  return db
    .prepare<[], { id: string }>(
      `SELECT "id" FROM "ImportRun" WHERE "state" IN ('uploaded', 'asking', 'ready')`,
    )
    .all()
    .map((run) => run.id);
}

/** Ids of the runs whose commit began and did not end. */
export function committingImports(db: ImportConnection): string[] {
  return db
    .prepare<[], { id: string }>(
      `SELECT "id" FROM "ImportRun" WHERE "state" = 'committing' ORDER BY "startedAt"`,
    )
    .all()
    .map((run) => run.id);
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

/**
 * Moves a run from one of the states that it may be in to another. Whoever comes second, such as a process
 * whose run was cancelled meanwhile, moves nothing.
 *
 * @param db the import's connection
 * @param runId the run
 * @param from states that it may be in
 * @param to the next state
 * @param finishedAt instant, where it ends there
 * @returns whether it moved
 */
export function moveImport(
  db: ImportConnection,
  runId: string,
  from: readonly ImportState[],
  to: ImportState,
  finishedAt: string | null = null,
): boolean {
  const places = from.map(() => "?").join(", ");
  const moved = db
    .prepare(
      `UPDATE "ImportRun" SET "state" = ?, "finishedAt" = ?, "problem" = NULL
       WHERE "id" = ? AND "state" IN (${places})`,
    )
    .run(to, finishedAt, runId, ...from);
  return moved.changes === 1;
}

/** A run was ended by someone else while it was read. */
export class ImportEndedMeanwhile extends Error {
  constructor(runId: string) {
    super(`The import run ${runId} was ended while it was read`);
    this.name = "ImportEndedMeanwhile";
  }
}

/**
 * Insists that a run is still being read. In the transaction that stages, it keeps a process that outlived its
 * server from writing to a run that the next start has cleared.
 *
 * @throws ImportEndedMeanwhile where it is not
 */
export function requireReading(db: ImportConnection, runId: string): void {
  const state = db
    .prepare<[string], { state: string }>(`SELECT "state" FROM "ImportRun" WHERE "id" = ?`)
    .get(runId)?.state;
  if (state !== "reading") throw new ImportEndedMeanwhile(runId);
}

/** Notes how many rows have been read so far. */
export function setRowsRead(db: ImportConnection, runId: string, rowsRead: number): void {
  db.prepare(`UPDATE "ImportRun" SET "rowsRead" = ? WHERE "id" = ?`).run(rowsRead, runId);
}

/**
 * Ends a run as refused, with its reasons.
 *
 * @returns false where it is not being worked on, and stays as it is
 */
export function refuseImport(
  db: ImportConnection,
  runId: string,
  problems: ImportProblems,
  now: string,
): boolean {
  const refused = db
    .prepare(
      `UPDATE "ImportRun" SET "state" = 'refused', "finishedAt" = ?, "problem" = ?
       WHERE "id" = ? AND "state" IN ('reading', 'asking', 'committing')`,
    )
    .run(now, JSON.stringify(problems), runId);
  return refused.changes === 1;
}

function runOfRow({ problem, ...run }: RunRow): ImportRun {
  return { ...run, problems: problem === null ? null : (JSON.parse(problem) as ImportProblems) };
}

/** Marks a run that was read as ready for its yes, with the counts of its staged parcels. */
export function setImportReady(db: ImportConnection, runId: string): void {
  db.prepare(
    `UPDATE "ImportRun" SET "state" = 'ready', "problem" = NULL,
       "newParcels" = (SELECT COUNT(*) FROM "StagedParcel" WHERE "runId" = :runId AND "fate" = 'new'),
       "sameParcels" = (SELECT COUNT(*) FROM "StagedParcel" WHERE "runId" = :runId AND "fate" IN ('same', 'kept')),
       "changedParcels" = (SELECT COUNT(*) FROM "StagedParcel" WHERE "runId" = :runId AND "fate" = 'changed')
     WHERE "id" = :runId AND "state" = 'reading'`,
  ).run({ runId });
}
