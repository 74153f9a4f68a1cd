import { spawn } from "node:child_process";
import { rm } from "node:fs/promises";
import { join } from "node:path";
import { databaseFile } from "#prisma/client";
import { claimCommit } from "#prisma/records/import/commit-import";
import { importRunOf, moveImport, refuseImport } from "#prisma/records/import/import-runs";
import { uploadedFile } from "./uploaded-file";
import { withImportConnection } from "./with-import-connection";

/** How often a commit whose process ended early is taken up again before it is left to the next start. */
const MOST_TRIES = 3;

/**
 * Starts the import's own process and comes back at once; the run's state and its rows read so far say how
 * far it is. A run that is already worked on, or that ended, is left alone. A commit that stopped half way
 * is taken up again: what its seller said yes to is booked whole.
 *
 * @param runId the run
 * @param phase "stage" reads the file, "commit" books what it staged
 * @param now instant of the import
 */
export function startImport(runId: string, phase: "stage" | "commit", now: string): void {
  const isClaimed = withImportConnection((db) => {
    if (phase === "commit") return importRunOf(db, runId)?.state === "ready" && claimCommit(db, runId);
    return moveImport(db, runId, ["uploaded", "asking"], "reading");
  });
  if (isClaimed) work(runId, phase, now, 1);
}

function work(runId: string, phase: "stage" | "commit", now: string, tries: number): void {
  const root = process.cwd();
  const script = join(/* turbopackIgnore: true */ root, "app", "import", "run-import.ts");
  const args = ["--import", "tsx", script, databaseFile(), runId, uploadedFile(runId), phase, now];
  // Through the channel the process learns that its server is gone, however that ended.
  const stdio = ["ignore", "ignore", "inherit", "ipc"] as const;
  const child = spawn(process.execPath, args, { cwd: root, stdio: [...stdio] });
  const onStop = (): void => {
    const isHalfWay = withImportConnection((db) => importRunOf(db, runId))?.state === "committing";
    if (!isHalfWay) stopped(runId, now);
    else if (tries < MOST_TRIES) work(runId, "commit", now, tries + 1);
  };
  child.on("error", onStop);
  child.on("exit", (code) => {
    if (code !== 0) onStop();
  });
}

/**
 * A process that ended early while it read booked nothing: says so. A run that waits for an answer still has
 * all it needs and stays. The next start deletes what was staged.
 */
function stopped(runId: string, now: string): void {
  const state = withImportConnection((db) => {
    const before = importRunOf(db, runId)?.state;
    if (before === "reading") refuseImport(db, runId, { problems: [{ kind: "stopped" }], total: 1 }, now);
    return importRunOf(db, runId)?.state;
  });
  const isWaiting = state === "uploaded" || state === "asking" || state === "ready";
  if (!isWaiting) void rm(uploadedFile(runId), { force: true });
}
