import { dirname, join } from "node:path";
import { databaseFile } from "#prisma/client";

/** Folder of the files that wait to be imported, beside the database. */
export function uploadFolder(database = databaseFile()): string {
  return join(dirname(database), "imports");
}

/** Where the file of a run waits until the run ends. */
export function uploadedFile(runId: string): string {
  return join(uploadFolder(), `${runId}.csv`);
}
