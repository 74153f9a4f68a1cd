import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { progress } from "./progress.mjs";
import { root } from "./root.mjs";
import { CommandFailed, run } from "./run.mjs";

/** @typedef {{ version?: string, integrity?: string, optional?: boolean, devOptional?: boolean }} LockedPackage */
/** @typedef {{ packages: Record<string, LockedPackage> }} Lock */

const DRIVER = "node_modules/better-sqlite3/build/Release/better_sqlite3.node";

/**
 * Whether the installed packages are those of the lock file. Packages that are optional may be absent:
 * most are for other systems.
 *
 * @param {Lock} wanted package-lock.json
 * @param {Lock} installed node_modules/.package-lock.json, which npm writes when it has installed
 */
export function matchesLock(wanted, installed) {
  return Object.entries(wanted.packages).every(([path, entry]) => {
    if (path === "") return true;
    const found = installed.packages[path];
    if (found === undefined) return entry.optional === true || entry.devOptional === true;
    return found.version === entry.version && found.integrity === entry.integrity;
  });
}

/** Installs the packages of the lock file where they are missing or others. */
export async function install() {
  if (isInstalled()) return;
  await progress("Installing packages (a few minutes the first time)", async () => {
    try {
      await run("npm", ["ci", "--include=dev", "--no-audit", "--loglevel=error"], { output: "stderr" });
    } catch (error) {
      if (error instanceof CommandFailed) throw new Error(installAdvice(), { cause: error });
      throw error;
    }
  });
  if (!existsSync(join(root, DRIVER))) throw new Error(installAdvice());
}

function isInstalled() {
  const note = join(root, "node_modules/.package-lock.json");
  if (!existsSync(note) || !existsSync(join(root, DRIVER))) return false;
  return matchesLock(readLock(join(root, "package-lock.json")), readLock(note));
}

/**
 * @param {string} file
 * @returns {Lock}
 */
function readLock(file) {
  return JSON.parse(readFileSync(file, "utf8"));
}

/** @type {Partial<Record<NodeJS.Platform, string>>} */
const COMPILERS = {
  darwin: "xcode-select --install",
  win32: 'the "Desktop development with C++" workload of Visual Studio Build Tools, and Python 3',
  linux: "apt-get install build-essential python3 (or your system's C++ compiler, make and Python 3)",
};

function installAdvice() {
  const tools = COMPILERS[process.platform] ?? "a C++ compiler, make and Python 3";
  return [
    "The packages could not be installed; npm's own words are above.",
    "If they speak of no network, connect and start again.",
    `If they speak of better-sqlite3, gyp, make or a compiler, install: ${tools}.`,
  ].join("\n");
}
