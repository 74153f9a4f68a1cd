import { clearStaged } from "#prisma/records/import/clear-staged";
import type { ImportConnection } from "#prisma/records/import/import-connection";
import type { DayFormat, ImportMapping } from "#prisma/records/import/import-mapping";
import type { ImportField, ImportProblem } from "#prisma/records/import/import-problem";
import {
  ImportEndedMeanwhile,
  type ImportRun,
  importRunOf,
  moveImport,
  refuseImport,
  setImportReady,
  setRowsRead,
} from "#prisma/records/import/import-runs";
import { importTerms } from "#prisma/records/import/import-terms";
import { type AskedValue, askValues, valueMatcher } from "#prisma/records/import/import-values";
import { stageParcels } from "#prisma/records/import/stage-parcels";
import { type ImportedRow, stageRows } from "#prisma/records/import/stage-rows";
import { csvRecords } from "./csv-records";
import { DayFormatTally } from "./day-format";
import type { FileHead } from "./file-head";
import { ProblemList } from "./problem-list";
import { rowReader } from "./row-reader";

type Head = Extract<FileHead, { kind: "head" }>;

/** What a file is staged with. */
export type StageOptions = {
  readonly mapping: ImportMapping;
  /** Beginning of the file. */
  readonly head: FileHead;
  /** Instant of the import. */
  readonly now: string;
  /** How long the database stays free between two short transactions, milliseconds. */
  readonly pauseMs: number;
};

const NEEDED: readonly ImportField[] = ["packed-day", "item-type"];
const ROWS_PER_CHUNK = 600;
/** More new item types than this mean that the wrong column was chosen. */
const MOST_ASKED = 500;
/** Long enough for a parcel to be recorded in between. */
export const PAUSE_MS = 8;

/**
 * Reads a file and stages its parcels beside the ledger. The run ends as ready, as asking (texts that the
 * shop does not know), or as refused with the reasons; only a ready run keeps staged rows. A run that someone
 * ends meanwhile stays as ended, and nothing more is staged.
 *
 * @param db the import's connection
 * @param runId the run
 * @param path the file
 * @param options mapping and instant
 * @returns the run as it stands then
 */
export async function stageFile(
  db: ImportConnection,
  runId: string,
  path: string,
  options: StageOptions,
): Promise<ImportRun> {
  const pause = () => pauseOf(options.pauseMs);
  if (!moveImport(db, runId, ["uploaded", "asking", "reading"], "reading")) return runAt(db, runId);
  try {
    await stageInto(db, runId, path, options, pause);
  } catch (error) {
    if (!(error instanceof ImportEndedMeanwhile)) throw error;
    await clearStaged(db, runId, pause);
  }
  return runAt(db, runId);
}

async function stageInto(
  db: ImportConnection,
  runId: string,
  path: string,
  options: StageOptions,
  pause: () => Promise<void>,
): Promise<void> {
  await clearStaged(db, runId, pause);
  const problems = new ProblemList();
  const asked = await stageRowsOf(db, runId, path, options, problems);
  if (problems.isEmpty && asked.length === 0) {
    const run = runAt(db, runId);
    const terms = { source: run.source, ...importTerms(db, options.now) };
    problems.add(await stageParcels(db, runId, terms, pause));
  }
  if (problems.isEmpty && asked.length === 0) setImportReady(db, runId);
  else await clearStaged(db, runId, pause);
  if (!problems.isEmpty) refuseImport(db, runId, problems.found(), options.now);
  else if (asked.length > 0) ask(db, runId, asked);
}

/** Puts the texts down and waits for their meaning, both or neither. */
function ask(db: ImportConnection, runId: string, asked: readonly AskedValue[]): void {
  db.transaction(() => {
    if (moveImport(db, runId, ["reading"], "asking")) askValues(db, asked);
  }).immediate();
}

/** Stages the rows; gives the texts to ask about. */
async function stageRowsOf(
  db: ImportConnection,
  runId: string,
  path: string,
  options: StageOptions,
  problems: ProblemList,
): Promise<AskedValue[]> {
  const { head } = options;
  if (head.kind !== "head") {
    problems.add([headProblem(head)]);
    return [];
  }
  problems.add(unmapped(head, options.mapping));
  const dayFormat = options.mapping.dayFormat ?? (await onlyDayFormat(path, head, options.mapping, problems));
  if (!problems.isEmpty || dayFormat === null) return [];
  return readRows(
    db,
    runId,
    path,
    head,
    { ...options, mapping: { ...options.mapping, dayFormat } },
    problems,
  );
}

async function readRows(
  db: ImportConnection,
  runId: string,
  path: string,
  head: Head,
  options: StageOptions & { readonly mapping: { readonly dayFormat: DayFormat } },
  problems: ProblemList,
): Promise<AskedValue[]> {
  const { mapping, now } = options;
  const read = rowReader({
    columns: head.columns,
    mapping,
    match: valueMatcher(db),
    ...importTerms(db, now),
  });
  const asked = new Map<string, AskedValue>();
  let rows: ImportedRow[] = [];
  let rowsRead = 0;
  const flush = async () => {
    if (problems.isEmpty && asked.size === 0) stageRows(db, runId, rows);
    setRowsRead(db, runId, rowsRead);
    rows = [];
    await pauseOf(options.pauseMs);
  };
  for await (const record of recordsBelowHeader(path, head)) {
    if (record.kind === "broken") {
      problems.add([brokenProblem(record)]);
      break;
    }
    rowsRead += 1;
    const reading = read(record.line, record.cells);
    if (reading.kind === "row") rows.push(reading.row);
    else {
      problems.add(reading.problems);
      for (const value of reading.asked) asked.set(`${value.kind}\n${value.text}`, value);
    }
    if (asked.size > MOST_ASKED) {
      problems.add([
        { kind: "too-many-values", field: [...asked.values()][0]?.kind ?? "item-type", limit: MOST_ASKED },
      ]);
      break;
    }
    if (rowsRead % ROWS_PER_CHUNK === 0) await flush();
  }
  await flush();
  if (rowsRead === 0 && problems.isEmpty) problems.add([{ kind: "no-rows" }]);
  return [...asked.values()];
}

async function* recordsBelowHeader(path: string, head: Head) {
  let isHeader = true;
  for await (const record of csvRecords(path, head)) {
    if (!isHeader) yield record;
    isHeader = false;
  }
}

function unmapped(head: Head, mapping: ImportMapping): ImportProblem[] {
  return NEEDED.filter((field) => !head.columns.includes(mapping.columns[field] ?? "")).map((field) => ({
    kind: "unmapped",
    field,
  }));
}

/** The one format that the days of the file fit, where nobody chose one. */
async function onlyDayFormat(
  path: string,
  head: Head,
  mapping: ImportMapping,
  problems: ProblemList,
): Promise<DayFormat | null> {
  const column = mapping.columns["packed-day"] ?? "";
  const index = head.columns.indexOf(column);
  const tally = new DayFormatTally();
  let rows = 0;
  for await (const record of recordsBelowHeader(path, head)) {
    if (record.kind === "broken") {
      problems.add([brokenProblem(record)]);
      return null;
    }
    rows += 1;
    tally.add(record.cells[index] ?? "");
  }
  const fits = tally.likeliest();
  if (fits.length === 1) return fits[0] ?? null;
  problems.add([rows === 0 ? { kind: "no-rows" } : { kind: "day-format", column, fits }]);
  return null;
}

function headProblem(head: Exclude<FileHead, Head>): ImportProblem {
  return head.kind === "broken" ? brokenProblem(head) : { kind: "not-text", reason: head.reason };
}

function brokenProblem({ line, reason }: { line: number; reason: "quotes" | "too-long" }): ImportProblem {
  return reason === "quotes" ? { kind: "broken-quotes", line } : { kind: "row-too-long", line };
}

function runAt(db: ImportConnection, runId: string): ImportRun {
  const run = importRunOf(db, runId);
  if (run === null) throw new Error(`There is no import run ${runId}`);
  return run;
}

function pauseOf(milliseconds: number): Promise<void> {
  return new Promise((resolve) => {
    if (milliseconds === 0) resolve();
    else setTimeout(resolve, milliseconds);
  });
}
