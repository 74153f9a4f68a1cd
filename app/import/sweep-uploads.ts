import { existsSync } from "node:fs";
import { readdir, rm } from "node:fs/promises";
import { join } from "node:path";
import { openImportConnection } from "#prisma/records/import/import-connection";
import { waitingImports } from "#prisma/records/import/import-runs";
import { uploadFolder } from "./uploaded-file";

/**
 * Deletes the uploaded files that no run waits for any more: half sent, or left by a program that was stopped.
 *
 * @param database path of the database, at the start of the program, after its unfinished runs were cancelled
 * @returns how many files were deleted
 */
export async function sweepUploads(database: string): Promise<number> {
  const folder = uploadFolder(database);
  if (!existsSync(folder)) return 0;
  const db = openImportConnection(database);
  const waiting = new Set(waitingImports(db).map((id) => `${id}.csv`));
  db.close();
  const left = (await readdir(folder)).filter((name) => !waiting.has(name));
  for (const name of left) await rm(join(folder, name), { force: true });
  return left.length;
}
