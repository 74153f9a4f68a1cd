import { existsSync, statSync } from "node:fs";
import { type Database, databaseFile } from "#prisma/client";
import { writtenVersion } from "#prisma/records/written-version";
import { houseFile } from "../server/house/house-file.mjs";

/**
 * What differs once anything that a screen shows was written: the shop's records, or the list of paired devices. It
 * names the process, as the database's version means nothing in the next one.
 *
 * @param db the database
 * @returns a text to compare
 */
export async function seenVersion(db: Database): Promise<string> {
  const devices = houseFile(databaseFile());
  const kept = existsSync(devices) ? statSync(devices).mtimeMs : 0;
  return [process.pid, performance.timeOrigin, await writtenVersion(db), kept].join(" ");
}
