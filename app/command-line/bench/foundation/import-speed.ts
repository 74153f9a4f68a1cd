import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { z } from "zod";
import { addDays } from "#lib/units/day";
import { closeDatabase, openDatabase } from "#prisma/client";
import { type Measurement, measurement, nearestRank } from "../../measurement";
import { runTypeScript } from "../../set-up/run.mjs";
import { GENERATED_TODAY } from "./generated-shop";
import { recordOne } from "./record-speed";

const TARGET_SECONDS = 90;
const TARGET_RECORD_MS = 1_000;
/** A file of four times the rows may need this much more memory: noise, not growth. */
const TARGET_MEMORY_RATIO = 1.2;
const FEWER = 4;
const DAYS = 700;
const SHARE = 0.95;
const RECORD_EVERY_MS = 250;
const FIRST_RUN = 1_000_000;

const timedImport = z.object({
  kind: z.literal("committed"),
  newParcels: z.number(),
  seconds: z.number(),
  peakBytes: z.number(),
});

/** A program that serves, and the database that it serves. */
export type ServedShop = { readonly url: string; readonly file: string };

/**
 * The time to import a file of parcels into a shop that has as many, from reading to booked, its memory
 * against that of a smaller file, and how long a parcel takes to record meanwhile. A parcel is sent every
 * quarter of a second whether or not the last one was answered, as a packer does not wait for the import.
 *
 * @param folder where the files go
 * @param shop the program and its database
 * @param rows parcels in the file
 */
export async function importSpeed(folder: string, shop: ServedShop, rows: number): Promise<Measurement[]> {
  const small = await importFile(folder, shop.file, { source: "bench-small", rows: rows / FEWER });
  const recording = recordUntilStopped(shop.url);
  const large = await importFile(folder, shop.file, { source: "bench-large", rows });
  const times = await recording.stop();
  const area = "foundation";
  return [
    measurement({
      area,
      name: "import of 100,000 rows",
      value: large.seconds,
      unit: "s",
      target: TARGET_SECONDS,
    }),
    measurement({
      area,
      name: "peak memory of the import, 100,000 rows to 25,000",
      value: large.peakBytes / small.peakBytes,
      unit: "times",
      target: TARGET_MEMORY_RATIO,
    }),
    measurement({
      area,
      name: "record a parcel beside the import (95 of 100)",
      value: nearestRank(times, SHARE),
      unit: "ms",
      target: TARGET_RECORD_MS,
    }),
    measurement({
      area,
      name: "record a parcel beside the import (the longest)",
      value: Math.max(...times),
      unit: "ms",
      target: null,
    }),
  ];
}

async function importFile(
  folder: string,
  database: string,
  { source, rows }: { readonly source: string; readonly rows: number },
): Promise<z.infer<typeof timedImport>> {
  const csv = join(folder, `${source}.csv`);
  writeFileSync(csv, parcelsFile(rows, source));
  const script = "app/command-line/bench/foundation/timed-import.ts";
  const printed = await runTypeScript(script, [database, csv, source], { output: "keep" });
  const outcome = timedImport.parse(JSON.parse(printed));
  await requireBooked(database, source, rows);
  return outcome;
}

/** An import that books no materials would be quick and worthless. */
async function requireBooked(database: string, source: string, rows: number): Promise<void> {
  const db = await openDatabase(database);
  try {
    const parcels = await db.parcel.count({ where: { source } });
    const bare = await db.parcel.count({ where: { source, movements: { none: {} } } });
    if (parcels !== rows || bare > 0) {
      throw new Error(
        `The import of ${source} left ${parcels} of ${rows} parcels, ${bare} without materials`,
      );
    }
  } finally {
    await closeDatabase(db);
  }
}

function recordUntilStopped(url: string): { readonly stop: () => Promise<number[]> } {
  const sent: Promise<number>[] = [];
  const timer = setInterval(() => sent.push(recordOne(url, FIRST_RUN + sent.length)), RECORD_EVERY_MS);
  return {
    stop: () => {
      clearInterval(timer);
      return Promise.all(sent);
    },
  };
}

function parcelsFile(rows: number, source: string): string {
  const lines = Array.from({ length: rows }, (_, row) => {
    const day = addDays(GENERATED_TODAY, -(DAYS - Math.floor((row * DAYS) / rows)));
    return `${day},${source}-${row},Zone ${row % 4},Item ${row % 10},${1 + (row % 3)}`;
  });
  return `shipped_on,order_ref,destination,item_type,pieces\n${lines.join("\n")}\n`;
}
