import type { Day } from "#lib/units/day";
import { type Database, inTransaction, type Transaction } from "../client";
import type { Recorder } from "./ledger";
import { promisedOn } from "./promised-on";
import { type PurchaseBody, type PurchaseLineBody, writePurchase, writePurchaseLines } from "./purchases";

/** What of a draft can be changed. */
export type DraftChange = {
  readonly deliveryMinor: number | null;
  readonly note: string | null;
  readonly lines: readonly PurchaseLineBody[];
};

/** Why a draft cannot be changed or placed. */
export type NoDraft = { readonly kind: "unknown" | "not-draft" };

/**
 * Writes down an order that is not placed yet: nothing of it is on order. `placedOn` is the day it was written.
 *
 * @returns "already-written" where the same order is there, draft or placed; nothing is changed then
 */
export async function draftPurchase(
  db: Database,
  purchase: PurchaseBody,
  by: Recorder,
): Promise<{ kind: "written" | "already-written" }> {
  return inTransaction(db, async (tx) => {
    const isNew = await writePurchase(tx, purchase, { state: "draft", recordedAt: by.now });
    return { kind: isNew ? "written" : "already-written" };
  });
}

/**
 * Writes down several orders that are not placed yet, all of them or none.
 *
 * @returns how many were new; one whose id was written before stays as it is
 */
export async function draftPurchases(
  db: Database,
  purchases: readonly PurchaseBody[],
  by: Recorder,
): Promise<number> {
  return inTransaction(db, async (tx) => {
    let written = 0;
    for (const purchase of purchases) {
      if (await writePurchase(tx, purchase, { state: "draft", recordedAt: by.now })) written += 1;
    }
    return written;
  });
}

/** Puts other lines, another delivery charge and another note into a draft. */
export async function changeDraft(
  db: Database,
  purchaseId: string,
  change: DraftChange,
): Promise<{ kind: "changed" } | NoDraft> {
  return inTransaction(db, async (tx) => {
    const state = await draftState(tx, purchaseId);
    if (state !== null) return state;
    const { lines, ...head } = change;
    await tx.purchase.update({ where: { id: purchaseId }, data: head });
    await tx.purchaseLine.deleteMany({ where: { purchaseId } });
    await writePurchaseLines(tx, purchaseId, lines);
    return { kind: "changed" };
  });
}

/** When a draft is placed: the day, the time where it is noted, and when it should come. */
export type Placing = {
  readonly placedOn: Day;
  readonly placedAt: string | null;
  /** left out: the day that the supplier's terms promise */
  readonly expectedOn?: Day;
};

/**
 * Places a draft: from now on its packs are on order.
 *
 * @returns "empty" where it has no line; "already-placed" where it was placed before: nothing is changed then
 */
export async function placeDraft(
  db: Database,
  purchaseId: string,
  placing: Placing,
): Promise<{ kind: "placed" | "already-placed" | "unknown" | "empty" }> {
  return inTransaction(db, async (tx) => {
    const draft = await tx.purchase.findUnique({
      where: { id: purchaseId },
      include: { lines: { select: { id: true } }, supplier: { include: { closures: true } } },
    });
    if (draft === null) return { kind: "unknown" };
    if (draft.state !== "draft") return { kind: "already-placed" };
    if (draft.lines.length === 0) return { kind: "empty" };
    const { placedOn, placedAt } = placing;
    const { closures, ...supplier } = draft.supplier;
    const expectedOn = placing.expectedOn ?? promisedOn(supplier, closures, placing);
    await tx.purchase.update({ where: { id: purchaseId }, data: { state: "placed", placedOn, placedAt } });
    await tx.purchaseLine.updateMany({ where: { purchaseId }, data: { expectedOn } });
    return { kind: "placed" };
  });
}

/** Throws a draft away; an order that was placed is cancelled instead. */
export async function deleteDraft(db: Database, purchaseId: string): Promise<{ kind: "deleted" } | NoDraft> {
  return inTransaction(db, async (tx) => {
    const state = await draftState(tx, purchaseId);
    if (state !== null) return state;
    await tx.purchaseLine.deleteMany({ where: { purchaseId } });
    await tx.purchase.delete({ where: { id: purchaseId } });
    return { kind: "deleted" };
  });
}

async function draftState(tx: Transaction, purchaseId: string): Promise<NoDraft | null> {
  const found = await tx.purchase.findUnique({ where: { id: purchaseId }, select: { state: true } });
  if (found === null) return { kind: "unknown" };
  return found.state === "draft" ? null : { kind: "not-draft" };
}
