import { type Database, inTransaction } from "#prisma/client";
import type { DemoEvent } from "#prisma/demo/demo-event";
import { type NewParcel, recordNewParcels } from "#prisma/records/parcels";
import { shopIn } from "#prisma/records/shop";

const DEVICE = "demo";

/**
 * Records the demo shop's events in the order of time. Parcels of one day with nothing between them are
 * recorded together, everything else one by one.
 *
 * @param db - the database
 * @param events - in any order
 * @example await recordEvents(db, [...parcelEvents(parcel, clock)]);
 */
export async function recordEvents(db: Database, events: readonly DemoEvent[]): Promise<void> {
  const inOrder = events.toSorted((a, b) => (a.at < b.at ? -1 : Number(a.at > b.at)));
  let run: NewParcel[] = [];
  for (const event of inOrder) {
    const sameDay = run[0] === undefined || run[0].body.packedOn === event.packed?.body.packedOn;
    if (event.packed === undefined || !sameDay) {
      await recordRun(db, run);
      run = [];
    }
    if (event.packed === undefined) await event.record(db, { device: DEVICE, now: event.at });
    else run.push(event.packed);
  }
  await recordRun(db, run);
}

async function recordRun(db: Database, run: readonly NewParcel[]): Promise<void> {
  const last = run.at(-1);
  if (last === undefined) return;
  const by = { device: DEVICE, now: last.at };
  await inTransaction(db, async (tx) => recordNewParcels(tx, run, { shop: await shopIn(tx), by }));
}
