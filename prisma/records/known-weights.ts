import type { KnownWeights } from "#lib/packing/weight/known-weights";
import { learnedWeights } from "#lib/packing/weight/learned-weights";
import type { Day } from "#lib/units/day";
import type { Database } from "../client";
import { weighedParcelsOf } from "./weighed-parcels";

type Entry = { readonly key: string; readonly known: Promise<KnownWeights> };

// Next keeps a copy of this module for screens and one for routes; what was learned is one for both.
const KEY = Symbol.for("wadding.known-weights");
const held = globalThis as unknown as { [KEY]?: WeakMap<Database, Entry> };
const learned: WeakMap<Database, Entry> = held[KEY] ?? new WeakMap();
held[KEY] = learned;

/**
 * What the parcels packed before a day say about weights. Learning takes a good part of a second, and a parcel is
 * recorded every few minutes: so today's own parcels count from tomorrow on, and what was learned is kept until the day
 * or a mass changes.
 *
 * @param db the database
 * @param today the day of the question
 * @returns plain numbers for `packedWeight`
 */
export async function knownWeightsOn(db: Database, today: Day): Promise<KnownWeights> {
  const key = `${today} ${await massesOf(db)}`;
  const kept = learned.get(db);
  if (kept?.key === key) return kept.known;
  const known = weighedParcelsOf(db, today).then((parcels) => learnedWeights(parcels, today).known);
  learned.set(db, { key, known });
  try {
    return await known;
  } catch (error) {
    if (learned.get(db)?.known === known) learned.delete(db);
    throw error;
  }
}

/** A text that differs once a mass was changed. */
async function massesOf(db: Database): Promise<string> {
  const [supplies, itemTypes] = await Promise.all([
    db.supply.findMany({ select: { massMg: true }, orderBy: { id: "asc" } }),
    db.itemType.findMany({ select: { massMg: true }, orderBy: { id: "asc" } }),
  ]);
  return [supplies, itemTypes].map((rows) => rows.map(({ massMg }) => massMg ?? "").join(",")).join(" ");
}
