import { existsSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { z } from "zod";
import { EMPTY_HOUSE } from "./pairing.mjs";

/** Readable by the owner of the machine alone. */
const OWNER_ONLY = 0o600;

const houseForm = z.object({
  devices: z.array(
    z.object({
      id: z.string(),
      name: z.string(),
      tokenHash: z.string(),
      pairedAt: z.string(),
      lastSeenAt: z.string(),
    }),
  ),
  pairing: z.object({ code: z.string(), until: z.string(), triesLeft: z.number() }).nullable(),
});

/**
 * Where the devices of the house are kept: beside the database and not in it, so that a backup that is brought back
 * brings no device back that was sent away.
 *
 * @param {string} database path of the database
 * @returns {string} path
 */
export function houseFile(database) {
  return `${database.replace(/\.db$/, "")}.devices.json`;
}

/**
 * @param {string} file
 * @returns {import("./pairing.mjs").House} as kept; empty where nothing was kept yet
 * @throws {Error} where the file can't be read: nobody is let in by mistake
 */
export function readHouse(file) {
  if (!existsSync(file)) return EMPTY_HOUSE;
  try {
    return houseForm.parse(JSON.parse(readFileSync(file, "utf8")));
  } catch (cause) {
    throw new Error(`${file} can't be read. Delete it and pair the devices of the house anew.`, { cause });
  }
}

/**
 * Keeps the devices of the house: the whole file or nothing.
 *
 * @param {string} file
 * @param {import("./pairing.mjs").House} house
 */
export function writeHouse(file, house) {
  const draft = `${file}.new`;
  // On the disk before it takes the other's place: a power cut leaves one of the two whole.
  writeFileSync(draft, `${JSON.stringify(house, null, 2)}\n`, { mode: OWNER_ONLY, flush: true });
  renameSync(draft, file);
}
