import { rmSync } from "node:fs";
import { instantOfTime, shopDay } from "#lib/units/instant";
import { restoreDatabase } from "#prisma/backup";
import { closeDatabase, type Database, openDatabase } from "#prisma/client";
import { loadDemoShop } from "#prisma/demo/load-demo-shop";
import { migrateDatabase } from "#prisma/migrate";
import { parcelsOf } from "#prisma/records/parcel-lists";
import { shopOf } from "#prisma/records/shop";
import { suppliesOf } from "#prisma/records/supplies";

const file = process.argv[2];
if (file === undefined) throw new RangeError("load-demo requires the path of a database, got none");

if (await withDatabase(file, holdsData)) {
  console.log(`${file} holds data already: the demo shop was not loaded and nothing was changed`);
} else {
  await load(file);
}

/** The shop is loaded beside the empty database and takes its place when it is whole: a stop half way leaves none of it. */
async function load(target: string): Promise<void> {
  const beside = `${target}.loading`;
  const began = Date.now();
  console.log("Loading the demo shop, all of it invented …");
  removeDatabase(beside);
  try {
    migrateDatabase(beside);
    // In the zone of who looks at it: elsewhere the shop's day may be another one, and its last parcels lie ahead or today.
    const { timeZone } = Intl.DateTimeFormat().resolvedOptions();
    const today = shopDay(instantOfTime(began), timeZone);
    const { parcels } = await withDatabase(beside, (db) => loadDemoShop(db, { today, timeZone }));
    const placed = restoreDatabase(beside, target, new Date());
    if (placed.kind !== "restored") {
      console.error(
        `The demo shop could not take the place of ${target}: ${placed.kind}. Stop what has it open.`,
      );
      process.exitCode = 1;
      return;
    }
    if (placed.replaced !== null) removeDatabase(placed.replaced);
    console.log(`Loading the demo shop: ${parcels} parcels in ${Math.round((Date.now() - began) / 1000)} s`);
  } finally {
    removeDatabase(beside);
  }
}

async function holdsData(db: Database): Promise<boolean> {
  if ((await shopOf(db)) !== null) return true;
  if ((await suppliesOf(db, { retired: true })).length > 0) return true;
  return (await parcelsOf(db, { limit: 1 })).length > 0;
}

async function withDatabase<T>(path: string, work: (db: Database) => Promise<T>): Promise<T> {
  const db = await openDatabase(path);
  try {
    return await work(db);
  } finally {
    await closeDatabase(db);
  }
}

function removeDatabase(path: string): void {
  for (const ending of ["", "-wal", "-shm"]) rmSync(`${path}${ending}`, { force: true });
}
