import { type Database, inTransaction } from "../client";
import type { ZoneModel } from "../generated/models/Zone";

/** Where parcels go, as the postage is priced. */
export type Zone = ZoneModel;

/** Zones in use, in the shop's order. */
export async function zonesOf(db: Database): Promise<Zone[]> {
  return db.zone.findMany({ where: { retired: false }, orderBy: [{ position: "asc" }, { name: "asc" }] });
}

/** Creates a zone or saves its changes. */
export async function saveZone(db: Database, zone: Zone): Promise<void> {
  await inTransaction(db, (tx) => tx.zone.upsert({ where: { id: zone.id }, create: zone, update: zone }));
}
