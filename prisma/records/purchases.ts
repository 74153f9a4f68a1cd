import { type Amount, amount } from "#lib/units/amount";
import { type Database, inTransaction } from "../client";
import type { Recorder } from "./ledger";

/** An order placed with a supplier. */
export type PurchaseBody = {
  readonly id: string;
  readonly supplierId: string;
  readonly placedOn: string;
  readonly note: string | null;
  readonly lines: readonly {
    readonly id: string;
    readonly supplyId: string;
    readonly offerId: string | null;
    readonly packs: number;
    readonly packAmount: Amount;
    readonly priceMinor: number | null;
    readonly expectedOn: string;
  }[];
};

/** A line that is on its way. */
export type OpenPurchaseLine = PurchaseBody["lines"][number] & {
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
    if ((await tx.purchase.findUnique({ where: { id: purchase.id } })) !== null)
      return { kind: "already-placed" };
    const { lines, ...head } = purchase;
    await tx.purchase.create({ data: { ...head, recordedAt: by.now } });
    await tx.purchaseLine.createMany({
      data: lines.map((line) => ({ ...line, purchaseId: purchase.id, packAmount: BigInt(line.packAmount) })),
    });
    return { kind: "placed" };
  });
}

/** Lines on order now, the next to arrive first. */
export async function openPurchaseLines(
  db: Database,
  of: { readonly supplyId?: string } = {},
): Promise<OpenPurchaseLine[]> {
  const rows = await db.purchaseLine.findMany({
    where: { closedOn: null, ...of },
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
  return inTransaction(db, async (tx) => {
    const done = await tx.purchaseLine.updateMany({
      where: { id: lineId, closedOn: null },
      data: { closedOn: on, closedAs: "cancelled" },
    });
    return { kind: done.count === 1 ? "cancelled" : "not-open" };
  });
}
