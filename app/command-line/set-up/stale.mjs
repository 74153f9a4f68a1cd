import { createHash } from "node:crypto";
import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { root } from "./root.mjs";

const NOTES = join(root, "node_modules/.cache/wadding");

/**
 * One hash over the names and contents of files and folders.
 *
 * @param {readonly string[]} inputs paths under the folder; those that are missing count as missing
 * @param {(path: string) => boolean} [leaveOut] paths (with "/") that do not matter
 * @param {string} [folder] where the paths start; the project's folder unless said
 * @returns {string} SHA-256 in hexadecimal
 */
export function fingerprint(inputs, leaveOut = () => false, folder = root) {
  const hash = createHash("sha256");
  for (const path of inputs.flatMap((input) => filesUnder(folder, input, leaveOut))) {
    hash.update(`${path}\0`);
    hash.update(readFileSync(join(folder, path)));
    hash.update("\0");
  }
  return hash.digest("hex");
}

/**
 * @param {string} folder
 * @param {string} path
 * @param {(path: string) => boolean} leaveOut
 * @returns {string[]}
 */
function filesUnder(folder, path, leaveOut) {
  if (leaveOut(path)) return [];
  const found = statSync(join(folder, path), { throwIfNoEntry: false });
  if (found === undefined) return [];
  if (!found.isDirectory()) return [path];
  return readdirSync(join(folder, path))
    .sort()
    .flatMap((name) => filesUnder(folder, `${path}/${name}`, leaveOut));
}

/**
 * Whether something must be made again.
 *
 * @param {string} name of what is made
 * @param {string} print fingerprint of what it is made from, now
 */
export function isStale(name, print) {
  const note = join(NOTES, name);
  if (statSync(note, { throwIfNoEntry: false }) === undefined) return true;
  return readFileSync(note, "utf8") !== print;
}

/**
 * Notes that something was made from what has this fingerprint.
 *
 * @param {string} name
 * @param {string} print
 */
export function rememberFresh(name, print) {
  const note = join(NOTES, name);
  mkdirSync(dirname(note), { recursive: true });
  writeFileSync(note, print);
}
