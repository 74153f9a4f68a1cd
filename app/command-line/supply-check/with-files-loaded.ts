import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import type { Instant } from "#lib/units/instant";
import { closeDatabase, type Database, openDatabase } from "#prisma/client";
import { migrateDatabase } from "#prisma/migrate";
import { loadShopFile } from "#prisma/records/shop-file";
import { importParcels } from "../../import/import-parcels";

/** Problems shown at once; a file with one wrong column has thousands. */
const PROBLEMS_SHOWN = 20;

type Telling = { readonly now: Instant; readonly tell: (text: string) => void };

/**
 * Loads a shop and its parcels from files into a database of their own, which is removed afterwards.
 *
 * @param files - paths of the parcels (CSV) and of the shop (JSON)
 * @param telling - the clock, and where progress and problems go
 * @param work - what to do with the database
 * @returns what `work` returned, or that the files cannot be used; then the reason has been told
 * @example await withFilesLoaded({ parcels: "parcels.csv", shop: "shop.json" }, telling, (db) => weeklyCheckOn(db, today));
 */
export async function withFilesLoaded<T>(
  files: { readonly parcels: string; readonly shop: string },
  telling: Telling,
  work: (db: Database) => Promise<T>,
): Promise<T | { readonly kind: "files-refused" }> {
  const folder = await mkdtemp(join(tmpdir(), "wadding-check-"));
  try {
    const databaseFile = join(folder, "check.db");
    migrateDatabase(databaseFile);
    const db = await openDatabase(databaseFile);
    try {
      const refusal =
        (await loadShop(db, files.shop, telling)) ??
        (await loadParcels(databaseFile, files.parcels, telling));
      if (refusal !== null) {
        telling.tell(`${refusal}\n`);
        return { kind: "files-refused" };
      }
      return await work(db);
    } finally {
      await closeDatabase(db);
    }
  } finally {
    await rm(folder, { recursive: true });
  }
}

/** Loads the shop; gives what is wrong with the file, or null. */
async function loadShop(db: Database, path: string, telling: Telling): Promise<string | null> {
  telling.tell(`Reading the shop from ${basename(path)} …\n`);
  const text = await textOf(path);
  if (text === null) return `${path}: there is no such file`;
  const json = jsonOf(text);
  if (json.kind === "broken") return `${path}: is not JSON: ${json.message}`;
  const outcome = await loadShopFile(db, json.value, { now: telling.now });
  switch (outcome.kind) {
    case "loaded":
      return null;
    case "not-empty":
      return `${path}: the database holds a shop already`;
    case "unreadable": {
      const shown = outcome.problems
        .slice(0, PROBLEMS_SHOWN)
        .map(({ path: at, message }) => `  ${at}: ${message}`);
      const more = outcome.problems.length - shown.length;
      return [`${path} cannot be used:`, ...shown, ...(more > 0 ? [`  and ${more} more`] : [])].join("\n");
    }
  }
}

async function textOf(path: string): Promise<string | null> {
  try {
    return await readFile(path, "utf8");
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "ENOENT") return null;
    throw error;
  }
}

function jsonOf(text: string): { kind: "json"; value: unknown } | { kind: "broken"; message: string } {
  try {
    return { kind: "json", value: JSON.parse(text) };
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return { kind: "broken", message: error.message };
  }
}

async function loadParcels(databaseFile: string, path: string, telling: Telling): Promise<string | null> {
  telling.tell(`Importing the parcels of ${basename(path)} …\n`);
  if ((await textOf(path)) === null) return `${path}: there is no such file`;
  const outcome = await importParcels(databaseFile, path, { source: basename(path), createMissing: true });
  if (outcome.kind === "committed") {
    telling.tell(`${outcome.newParcels} parcels imported.\n`);
    return null;
  }
  return `${path} cannot be imported: ${JSON.stringify(outcome)}`;
}
