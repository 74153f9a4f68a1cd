import { rm } from "node:fs/promises";
import { clearStaged } from "#prisma/records/import/clear-staged";
import { commitImport } from "#prisma/records/import/commit-import";
import { type ImportConnection, openImportConnection } from "#prisma/records/import/import-connection";
import { rememberedMapping } from "#prisma/records/import/import-mapping";
import { importRunOf } from "#prisma/records/import/import-runs";
import { betweenParts } from "./between-parts";
import { fileHead } from "./file-head";
import { guessedMapping } from "./guessed-mapping";
import { PAUSE_MS, stageFile } from "./stage-file";

/**
 * The import's own process, so that the server stays free to answer:
 * `run-import.ts <database> <run> <file> <stage|commit> <now>`.
 */
const [databasePath = "", runId = "", path = "", phase = "", now = ""] = process.argv.slice(2);
// Without the server that started it nobody follows the run, and the next start clears it: stop as well.
process.once("disconnect", () => process.exit(1));
process.channel?.unref();

const connection = openImportConnection(databasePath);
try {
  if (phase === "commit") await commit(connection);
  else await stage(connection);
} finally {
  connection.close();
}

async function stage(db: ImportConnection): Promise<void> {
  const head = await fileHead(path);
  const mapping =
    head.kind === "head"
      ? (rememberedMapping(db, head.headerHash) ?? guessedMapping(head))
      : ({ columns: {}, dayFormat: null, scaleUnit: "g" } as const);
  const run = await stageFile(db, runId, path, { mapping, head, now, pauseMs: PAUSE_MS });
  if (run.state === "refused") await rm(path, { force: true });
}

async function commit(db: ImportConnection): Promise<void> {
  const outcome = await commitImport(db, runId, { device: "import", now, pause: betweenParts });
  // Someone put a parcel right since the preview: work it out again, and ask again.
  if (outcome.kind === "stale") return stage(db);
  if (importRunOf(db, runId)?.state !== "committed") return;
  await clearStaged(db, runId, () => new Promise((resolve) => setTimeout(resolve, PAUSE_MS)));
  await rm(path, { force: true });
}
