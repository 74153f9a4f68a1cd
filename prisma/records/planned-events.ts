import type { PlannedEvent } from "#lib/forecast/planned-event";
import { day } from "#lib/units/day";
import { type Database, inTransaction } from "../client";
import { staleForecasts } from "./stale-forecasts";

/** Planned events, earliest first. */
export async function plannedEventsOf(db: Database): Promise<PlannedEvent[]> {
  const rows = await db.plannedEvent.findMany({
    orderBy: [{ fromDay: "asc" }, { toDay: "asc" }, { name: "asc" }],
    include: { itemTypes: { orderBy: { itemTypeId: "asc" }, select: { itemTypeId: true } } },
  });
  return rows.map(({ itemTypes, ...row }) => ({
    ...row,
    fromDay: day(row.fromDay),
    toDay: day(row.toDay),
    itemTypeIds: itemTypes.map(({ itemTypeId }) => itemTypeId),
  }));
}

/**
 * Plans an event or saves its changes, the item types that it holds for included.
 *
 * @param db the open database
 * @param event the event; its item types are known to the shop
 * @throws when an item type is not known; nothing is saved then
 */
export async function savePlannedEvent(db: Database, event: PlannedEvent): Promise<void> {
  const { itemTypeIds, ...columns } = event;
  await inTransaction(db, async (tx) => {
    await tx.plannedEvent.upsert({ where: { id: event.id }, create: columns, update: columns });
    await tx.plannedEventItemType.deleteMany({ where: { eventId: event.id } });
    await tx.plannedEventItemType.createMany({
      data: itemTypeIds.map((itemTypeId) => ({ eventId: event.id, itemTypeId })),
    });
    await staleForecasts(tx);
  });
}

/** Takes an event off the calendar. */
export async function removePlannedEvent(db: Database, id: string): Promise<void> {
  await inTransaction(db, async (tx) => {
    await tx.plannedEvent.deleteMany({ where: { id } });
    await staleForecasts(tx);
  });
}
