import { type Database, inTransaction } from "../client";
import type { ClosedSpanModel } from "../generated/models/ClosedSpan";
import { staleForecasts } from "./stale-forecasts";

/** Days on which the shop packs nothing, both ends included. */
export type ClosedSpan = ClosedSpanModel;

/** Closed days, earliest first. */
export async function closedSpansOf(db: Database): Promise<ClosedSpan[]> {
  return db.closedSpan.findMany({ orderBy: { fromDay: "asc" } });
}

/** Adds closed days or saves their change. */
export async function saveClosedSpan(db: Database, span: ClosedSpan): Promise<void> {
  await inTransaction(db, async (tx) => {
    await tx.closedSpan.upsert({ where: { id: span.id }, create: span, update: span });
    await staleForecasts(tx);
  });
}

/** Takes closed days off the calendar. */
export async function removeClosedSpan(db: Database, id: string): Promise<void> {
  await inTransaction(db, async (tx) => {
    await tx.closedSpan.deleteMany({ where: { id } });
    await staleForecasts(tx);
  });
}
