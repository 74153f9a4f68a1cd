import { spawn } from "node:child_process";
import { rm } from "node:fs/promises";
import { join } from "node:path";
import { databaseFile } from "#prisma/client";
import { claimCommit } from "#prisma/records/import/commit-import";
import { importRunOf, refuseImport, setImportState } from "#prisma/records/import/import-runs";
import { uploadedFile } from "./uploaded-file";
import { withImportConnection } from "./with-import-connection";

/**
 * Starts the import's own process and comes back at once; the run's state and its rows read so far say how
 * far it is.
 *
 * @param runId the run
 * @param phase "stage" reads the file, "commit" books what it staged
 * @param now instant of the import
 */
export function startImport(runId: string, phase: "stage" | "commit", now: string): void {
  const isClaimed = withImportConnection((db) => {
    if (phase === "commit") return importRunOf(db, runId)?.state === "ready" && claimCommit(db, runId);
    setImportState(db, runId, "reading");
    return true;
  });
  if (!isClaimed) return;
  const root = process.cwd();
  const script = join(/* turbopackIgnore: true */ root, "app", "import", "run-import.ts");
  const args = ["--import", "tsx", script, databaseFile(), runId, uploadedFile(runId), phase, now];
  const child = spawn(process.execPath, args, { cwd: root, stdio: ["ignore", "ignore", "inherit"] });
  child.on("error", () => stopped(runId, now));
  child.on("exit", (code) => {
    if (code !== 0) stopped(runId, now);
  });
}

/** A process that ended early booked nothing: says so. The next start deletes what it staged. */
function stopped(runId: string, now: string): void {
  withImportConnection((db) => {
    const state = importRunOf(db, runId)?.state;
    if (state === "committed" || state === "refused" || state === "cancelled") return;
    refuseImport(db, runId, { problems: [{ kind: "stopped" }], total: 1 }, now);
  });
  void rm(uploadedFile(runId), { force: true });
}
