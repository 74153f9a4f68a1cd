import { type Amount, amount } from "#lib/units/amount";
import { type Day, day, weekStart } from "#lib/units/day";
import { type Database, inTransaction } from "../client";
import { appendMovements, type Cause, type Recorder } from "./ledger";
import { reversalOf } from "./parcels";

/** One line of the ledger as it is shown. */
export type LedgerLine = {
  readonly id: number;
  readonly amount: Amount;
  readonly value: number | null;
  readonly cause: Cause;
  readonly effectiveAt: string;
  readonly effectiveDay: string;
  readonly recordedAt: string;
  readonly recordedBy: string;
  readonly typedValue: string | null;
  readonly typedUnit: string | null;
  readonly words: string | null;
  readonly parcelId: string | null;
  readonly reversesId: number | null;
  readonly reversed: boolean;
};

/** A supply's ledger, newest first. */
export async function movementsOf(
  db: Database,
  supplyId: string,
  page: { readonly limit: number; readonly before?: number },
): Promise<LedgerLine[]> {
  const rows = await db.movement.findMany({
    where: { supplyId, ...(page.before === undefined ? {} : { id: { lt: page.before } }) },
    orderBy: { id: "desc" },
    take: page.limit,
    include: { reversedBy: { select: { id: true } } },
  });
  return rows.map((row) => ({
    id: row.id,
    amount: amount(Number(row.amount)),
    value: row.value === null ? null : Number(row.value),
    cause: row.cause as Cause,
    effectiveAt: row.effectiveAt,
    effectiveDay: row.effectiveDay,
    recordedAt: row.recordedAt,
    recordedBy: row.recordedBy,
    typedValue: row.typedValue,
    typedUnit: row.typedUnit,
    words: row.words,
    parcelId: row.parcelId,
    reversesId: row.reversesId,
    reversed: row.reversedBy !== null,
  }));
}

/**
 * The newest line of the whole ledger: what a screen has seen when it is shown.
 *
 * @param db the open database
 * @returns its number, 0 for none
 */
export async function newestLine(db: Database): Promise<number> {
  const newest = await db.movement.findFirst({ orderBy: { id: "desc" }, select: { id: true } });
  return newest?.id ?? 0;
}

/** What a week did to a supply, by cause; amounts signed as in the ledger. */
export type SupplyWeek = { readonly weekStart: Day; readonly byCause: ReadonlyMap<Cause, Amount> };

/** A supply's weeks from its first movement on, oldest first; weeks without movements are left out. */
export async function supplyWeeksOf(
  db: Database,
  supplyId: string,
  weekStartsOn: number,
): Promise<SupplyWeek[]> {
  const rows = await db.supplyDay.findMany({ where: { supplyId }, orderBy: { day: "asc" } });
  const weeks = new Map<Day, Map<Cause, Amount>>();
  for (const row of rows) {
    const start = weekStart(day(row.day), weekStartsOn);
    const byCause = weeks.get(start) ?? new Map<Cause, Amount>();
    const cause = row.cause as Cause;
    byCause.set(cause, amount((byCause.get(cause) ?? 0) + Number(row.amount)));
    weeks.set(start, byCause);
  }
  return [...weeks].map(([start, byCause]) => ({ weekStart: start, byCause }));
}

const REVERSIBLE: readonly string[] = ["spoilt", "saved", "received", "returned"];

/**
 * Takes a single movement back. Use of a parcel is corrected in the parcel, a count by another count.
 *
 * @param reason why, in the person's words
 */
export async function reverseMovement(
  db: Database,
  movementId: number,
  reason: string,
  by: Recorder,
): Promise<
  { kind: "reversed" | "already-reversed" | "not-found" } | { kind: "not-reversible"; cause: string }
> {
  return inTransaction(db, async (tx) => {
    const movement = await tx.movement.findUnique({
      where: { id: movementId },
      include: { reversedBy: true },
    });
    if (movement === null) return { kind: "not-found" };
    if (!REVERSIBLE.includes(movement.cause) || movement.reversesId !== null) {
      return { kind: "not-reversible", cause: movement.cause };
    }
    if (movement.reversedBy !== null) return { kind: "already-reversed" };
    await appendMovements(tx, [reversalOf(movement, reason)], by);
    return { kind: "reversed" };
  });
}
