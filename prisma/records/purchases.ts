import { type Amount, amount } from "#lib/units/amount";
import { type Database, inTransaction, type Transaction } from "../client";
import type { Recorder } from "./ledger";

/** An order placed with a supplier. */
export type PurchaseBody = {
  readonly id: string;
  readonly supplierId: string;
  readonly placedOn: string;
  /** "15:30", where it was noted. */
  readonly placedAt?: string | null;
  /** Delivery as expected, minor units; null where it is not known. */
  readonly deliveryMinor?: number | null;
  readonly note: string | null;
  readonly lines: readonly PurchaseLineBody[];
};

/** One supply of an order, in a supplier's pack. */
export type PurchaseLineBody = {
  readonly id: string;
  readonly supplyId: string;
  readonly offerId: string | null;
  readonly packs: number;
  readonly packAmount: Amount;
  /** Price of one pack, minor units; null where it is not known. */
  readonly priceMinor: number | null;
  readonly expectedOn: string;
};

/** A line that is on its way. */
export type OpenPurchaseLine = PurchaseLineBody & {
  readonly purchaseId: string;
  readonly supplierId: string;
  readonly supplierName: string;
  readonly placedOn: string;
};

/** Marks an order as placed: its packs count in the inventory position until they are received or cancelled. */
export async function placePurchase(
  db: Database,
  purchase: PurchaseBody,
  by: Recorder,
): Promise<{ kind: "placed" | "already-placed" }> {
  return inTransaction(db, async (tx) => {
    const isNew = await writePurchase(tx, purchase, { state: "placed", recordedAt: by.now });
    return { kind: isNew ? "placed" : "already-placed" };
  });
}

/**
 * Writes an order with its lines; the same id twice is the same order.
 *
 * @param tx the open transaction
 * @param purchase the order
 * @param as draft or placed, and when it is recorded
 * @returns false where the order was written before
 */
export async function writePurchase(
  tx: Transaction,
  purchase: PurchaseBody,
  as: { readonly state: "draft" | "placed"; readonly recordedAt: string },
): Promise<boolean> {
  if ((await tx.purchase.findUnique({ where: { id: purchase.id } })) !== null) return false;
  const { lines, ...head } = purchase;
  await tx.purchase.create({ data: { ...head, ...as } });
  await writePurchaseLines(tx, purchase.id, lines);
  return true;
}

/** Writes the lines of an order that has none. */
export async function writePurchaseLines(
  tx: Transaction,
  purchaseId: string,
  lines: readonly PurchaseLineBody[],
): Promise<void> {
  await tx.purchaseLine.createMany({
    data: lines.map((line) => ({ ...line, purchaseId, packAmount: BigInt(line.packAmount) })),
  });
}

/** Lines on order now, the next to arrive first. What is only a draft is not on order. */
export async function openPurchaseLines(
  db: Database,
  of: { readonly supplyId?: string; readonly purchaseId?: string } = {},
): Promise<OpenPurchaseLine[]> {
  const rows = await db.purchaseLine.findMany({
    where: { closedOn: null, purchase: { state: "placed" }, ...of },
    orderBy: [{ expectedOn: "asc" }, { id: "asc" }],
    include: { purchase: { include: { supplier: { select: { name: true } } } } },
  });
  return rows.map((row) => ({
    id: row.id,
    purchaseId: row.purchaseId,
    supplierId: row.purchase.supplierId,
    supplierName: row.purchase.supplier.name,
    placedOn: row.purchase.placedOn,
    supplyId: row.supplyId,
    offerId: row.offerId,
    packs: row.packs,
    packAmount: amount(Number(row.packAmount)),
    priceMinor: row.priceMinor,
    expectedOn: row.expectedOn,
  }));
}

/** Cancels a line that is on order. */
export async function cancelPurchaseLine(
  db: Database,
  lineId: string,
  on: string,
): Promise<{ kind: "cancelled" | "not-open" }> {
  return inTransaction(db, async (tx) => cancelLines(tx, { id: lineId }, on));
}

/** Cancels all that is still on order of one order; what came of it stays booked. */
export async function cancelPurchase(
  db: Database,
  purchaseId: string,
  on: string,
): Promise<{ kind: "cancelled" | "not-open" }> {
  return inTransaction(db, async (tx) => cancelLines(tx, { purchaseId }, on));
}

async function cancelLines(
  tx: Transaction,
  which: { readonly id: string } | { readonly purchaseId: string },
  on: string,
): Promise<{ kind: "cancelled" | "not-open" }> {
  const cancelled = await tx.purchaseLine.updateMany({
    where: { ...which, closedOn: null, purchase: { state: "placed" } },
    data: { closedOn: on, closedAs: "cancelled" },
  });
  return { kind: cancelled.count > 0 ? "cancelled" : "not-open" };
}
