import { basename } from "node:path";
import { clearStaged } from "#prisma/records/import/clear-staged";
import { commitImport } from "#prisma/records/import/commit-import";
import { type ImportConnection, openImportConnection } from "#prisma/records/import/import-connection";
import { rememberedMapping } from "#prisma/records/import/import-mapping";
import {
  createImportRun,
  type ImportRun,
  importRunOf,
  refuseImport,
} from "#prisma/records/import/import-runs";
import { askedValues, rememberValue } from "#prisma/records/import/import-values";
import { betweenParts } from "./between-parts";
import { fileHash } from "./file-hash";
import { fileHead } from "./file-head";
import { guessedMapping } from "./guessed-mapping";
import { PAUSE_MS, stageFile } from "./stage-file";

/** How parcels are imported without a screen. */
export type ImportOptions = {
  /** Name of where the file comes from; the same order from the same source is the same parcel. */
  readonly source: string;
  /** "guess" takes the mapping remembered for this header line, else what the columns' names say. */
  readonly mapping?: "guess";
  /** Makes item types, zones and cartons that the shop does not know yet. */
  readonly createMissing: true;
  /** Instant of the import; now if left out. */
  readonly now?: string;
};

/** The run as it ended, by what came of it. */
export type ImportOutcome = ImportRun & { readonly kind: "committed" | "refused" };

/**
 * Imports parcels from a CSV file without asking: whole, or not at all.
 *
 * @param databaseFile a migrated database with a shop
 * @param csvPath the file
 * @param options source of the file
 * @returns the run: committed with its counts, or refused with its problems
 */
export async function importParcels(
  databaseFile: string,
  csvPath: string,
  options: ImportOptions,
): Promise<ImportOutcome> {
  const db = openImportConnection(databaseFile);
  try {
    const now = options.now ?? new Date().toISOString();
    return await importParcelsWith(db, csvPath, { source: options.source, now, pauseMs: PAUSE_MS });
  } finally {
    db.close();
  }
}

/**
 * As `importParcels`, over a connection that the caller opened.
 *
 * @param db the import's connection
 * @param csvPath the file
 * @param options source, instant, and the pause between two short transactions
 */
export async function importParcelsWith(
  db: ImportConnection,
  csvPath: string,
  options: { readonly source: string; readonly now: string; readonly pauseMs: number },
): Promise<ImportOutcome> {
  const { source, now, pauseMs } = options;
  const hash = await fileHash(csvPath);
  const runId = createImportRun(db, { source, fileName: basename(csvPath), fileHash: hash }, now);
  const head = await fileHead(csvPath);
  const mapping =
    head.kind === "head"
      ? (rememberedMapping(db, head.headerHash) ?? guessedMapping(head))
      : ({ columns: {}, dayFormat: null, scaleUnit: "g" } as const);
  let run = await stageFile(db, runId, csvPath, { mapping, head, now, pauseMs });
  if (run.state === "asking") {
    const asked = askedValues(db);
    for (const value of asked.filter(({ kind }) => kind !== "style"))
      rememberValue(db, value, { kind: "new" });
    const unknown = asked.filter(({ kind }) => kind === "style");
    if (unknown.length === 0) run = await stageFile(db, runId, csvPath, { mapping, head, now, pauseMs });
    else {
      const problems = unknown.map(({ kind, text }) => ({
        kind: "unknown-value" as const,
        field: kind,
        value: text,
      }));
      refuseImport(db, runId, { problems, total: problems.length }, now);
    }
  }
  while (run.state === "ready") {
    const pause = pauseMs > 0 ? betweenParts : () => Promise.resolve();
    const outcome = await commitImport(db, runId, { device: "import", now, pause });
    if (outcome.kind !== "stale") break;
    run = await stageFile(db, runId, csvPath, { mapping, head, now, pauseMs });
  }
  await clearStaged(db, runId, () => Promise.resolve());
  const ended = importRunOf(db, runId) ?? run;
  return { ...ended, kind: ended.state === "committed" ? "committed" : "refused" };
}
