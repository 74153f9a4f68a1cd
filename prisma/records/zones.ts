import { type Database, inTransaction } from "../client";
import type { ZoneModel } from "../generated/models/Zone";

/** Where parcels go, as the postage is priced. */
export type Zone = ZoneModel;

/**
 * Zones in use, in the shop's order.
 *
 * @param db the database
 * @param show `retired` gives those too that were taken off
 */
export async function zonesOf(db: Database, show: { readonly retired?: boolean } = {}): Promise<Zone[]> {
  return db.zone.findMany({
    where: show.retired === true ? {} : { retired: false },
    orderBy: [{ position: "asc" }, { name: "asc" }],
  });
}

/**
 * How many parcels went to each zone in a span of days; voided ones do not count.
 *
 * @param db the database
 * @param span first and last day packed
 * @returns by zone; null for those without one
 */
export async function parcelsByZone(
  db: Database,
  span: { readonly from: string; readonly to: string },
): Promise<ReadonlyMap<string | null, number>> {
  const rows = await db.parcel.groupBy({
    by: ["zoneId"],
    where: { packedOn: { gte: span.from, lte: span.to }, voidedAt: null },
    _count: { _all: true },
  });
  return new Map(rows.map(({ zoneId, _count }) => [zoneId, _count._all]));
}

/** Creates a zone or saves its changes. */
export async function saveZone(db: Database, zone: Zone): Promise<void> {
  await inTransaction(db, (tx) => tx.zone.upsert({ where: { id: zone.id }, create: zone, update: zone }));
}
