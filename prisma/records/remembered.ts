import type { Database } from "../client";
import { writtenVersion } from "./written-version";

type Entry = { readonly version: string; readonly value: Promise<unknown> };

// Next keeps a copy of this module for screens and one for routes; what is remembered is one for both.
const KEY = Symbol.for("wadding.remembered");
const held = globalThis as unknown as { [KEY]?: WeakMap<Database, Map<string, Entry>> };
const remembered: WeakMap<Database, Map<string, Entry>> = held[KEY] ?? new WeakMap();
held[KEY] = remembered;

/** Values that are kept for each database; the one asked for longest ago goes. */
const MOST = 16;

/**
 * What `make` makes from the database, kept in memory until anything is written to it, by this process or another.
 * Only for what depends on the database and the key alone: not on the clock, and not on what this process does.
 *
 * @param db the database
 * @param key what is made, with all that it depends on beside the database
 * @param make reads and reckons it
 * @returns the value: kept, or made now. Who asks while it is made waits for the same one. Not to be changed.
 */
export async function rememberedUntilWritten<Value>(
  db: Database,
  key: string,
  make: () => Promise<Value>,
): Promise<Value> {
  // Before anything is read: what is written meanwhile gives a later version, so the value is made anew next time.
  const version = await writtenVersion(db);
  const entries = remembered.get(db) ?? new Map<string, Entry>();
  remembered.set(db, entries);
  const kept = entries.get(key);
  entries.delete(key);
  const entry = kept?.version === version ? kept : { version, value: make() };
  entries.set(key, entry);
  for (const oldest of [...entries.keys()].slice(0, -MOST)) entries.delete(oldest);
  try {
    return (await entry.value) as Value;
  } catch (error) {
    if (entries.get(key) === entry) entries.delete(key);
    throw error;
  }
}
