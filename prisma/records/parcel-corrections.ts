import type { Amount } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { endOfDay, instant, shopDay } from "#lib/units/instant";
import { type Database, inTransaction, type Transaction } from "../client";
import { appendMovements, type MovementDraft, type Recorder } from "./ledger";
import { type ParcelBody, parcelBodyHash } from "./parcel-body";
import { addParcelsToDays } from "./parcel-day";
import { type OrderSeen, parcelDrafts, saveParcelParts } from "./parcel-parts";
import { effectiveAt, parcelColumns, reversalOf, standingMovements } from "./parcels";
import { shopIn } from "./shop";
import { unknownReference } from "./unknown-reference";

/** What came of a change to a parcel. */
export type CorrectionOutcome =
  | { readonly kind: "corrected"; readonly parcelId: string; readonly warnings: readonly OrderSeen[] }
  | { readonly kind: "not-found"; readonly parcelId: string }
  | { readonly kind: "void"; readonly parcelId: string }
  | { readonly kind: "ask-count-order"; readonly supplies: readonly string[] }
  | { readonly kind: "unknown"; readonly field: string; readonly id: string };

/**
 * Corrects a parcel. Lines that stay as they were keep their movements, amounts and costs; a line that
 * changed is taken back by a reversal and booked anew at the cost its supply had in this parcel.
 *
 * @param db the database
 * @param body the parcel as it should have been, under its own id
 * @param by who corrects, and when
 */
export async function correctParcel(
  db: Database,
  body: ParcelBody,
  by: Recorder,
): Promise<CorrectionOutcome> {
  return inTransaction(db, (tx) => correctParcelIn(tx, body, by));
}

/** As `correctParcel`, inside a transaction that the caller holds. */
export async function correctParcelIn(
  tx: Transaction,
  body: ParcelBody,
  by: Recorder,
): Promise<CorrectionOutcome> {
  const parcel = await standingParcel(tx, body.id);
  if (parcel === null) return { kind: "not-found", parcelId: body.id };
  if (parcel.voidedAt !== null) return { kind: "void", parcelId: body.id };
  const unknown = await unknownReference(tx, body);
  if (unknown !== null) return unknown;
  const moved = parcel.packedOn !== body.packedOn || body.countedSameDay !== undefined;
  const shop = await shopIn(tx);
  const when = moved
    ? await effectiveAt(tx, { body, shop, by })
    : { kind: "at" as const, at: parcel.effectiveAt };
  if (when.kind === "ask-count-order") return when;
  await addParcelsToDays(tx, [parcelAsBody(parcel)], -1);
  await tx.parcelPiece.deleteMany({ where: { parcelId: body.id } });
  await tx.parcelCarton.deleteMany({ where: { parcelId: body.id } });
  await tx.orderParcel.deleteMany({ where: { parcelId: body.id } });
  await tx.parcel.update({
    where: { id: body.id },
    data: {
      ...parcelColumns(body),
      effectiveAt: when.at,
      bodyHash: parcelBodyHash(body),
      revision: { increment: 1 },
    },
  });
  const warnings = await saveParcelParts(tx, [body], shop);
  await bookChanges(tx, body, when.at, by);
  await addParcelsToDays(tx, [body], 1);
  return { kind: "corrected", parcelId: body.id, warnings };
}

async function bookChanges(tx: Transaction, body: ParcelBody, at: string, by: Recorder): Promise<void> {
  const standing = await standingMovements(tx, body.id);
  const fresh = parcelDrafts(body, at);
  const left = [...fresh];
  const gone = standing.filter((movement) => {
    const index = left.findIndex(
      (draft) =>
        draft.supplyId === movement.supplyId &&
        draft.amount === movement.amount &&
        (draft.recipeStepId ?? null) === movement.recipeStepId &&
        (draft.unusual ?? false) === movement.unusual &&
        draft.effectiveDay === movement.effectiveDay &&
        draft.effectiveAt === movement.effectiveAt,
    );
    if (index >= 0) left.splice(index, 1);
    return index < 0;
  });
  const rebooked = left.map((draft): MovementDraft => {
    const before = standing.find(
      (movement) => movement.supplyId === draft.supplyId && movement.amount !== 0n,
    );
    if (before === undefined || before.value === null) return draft;
    return { ...draft, value: (draft.amount * before.value) / before.amount };
  });
  await appendMovements(tx, [...gone.map((movement) => reversalOf(movement, "corrected")), ...rebooked], by);
}

/**
 * Voids a parcel: all its use is taken back, the parcel stays to be seen.
 *
 * @param reason why, in the packer's words ("undone" for an undo)
 */
export async function voidParcel(
  db: Database,
  parcelId: string,
  reason: string,
  by: Recorder,
): Promise<{ kind: "voided" | "already-void" | "not-found" }> {
  return inTransaction(db, async (tx) => {
    const parcel = await standingParcel(tx, parcelId);
    if (parcel === null) return { kind: "not-found" };
    if (parcel.voidedAt !== null) return { kind: "already-void" };
    await tx.parcel.update({ where: { id: parcelId }, data: { voidedAt: by.now, voidReason: reason } });
    const standing = await standingMovements(tx, parcelId);
    await appendMovements(
      tx,
      standing.map((movement) => reversalOf(movement, reason)),
      by,
    );
    await addParcelsToDays(tx, [parcelAsBody(parcel)], -1);
    return { kind: "voided" };
  });
}

/** Notes that a parcel arrived broken. Its recipe versions stay linked to its pieces. */
export async function markBroken(
  db: Database,
  parcelId: string,
  broken: { readonly on: string; readonly cause: string; readonly note: string },
): Promise<{ kind: "marked" | "not-found" }> {
  return inTransaction(db, async (tx) => {
    const done = await tx.parcel.updateMany({
      where: { id: parcelId },
      data: { brokenOn: broken.on, brokenCause: broken.cause, brokenNote: broken.note },
    });
    return { kind: done.count === 1 ? "marked" : "not-found" };
  });
}

/** Notes the day on which a parcel was posted. */
export async function markPosted(
  db: Database,
  parcelId: string,
  on: string,
): Promise<{ kind: "marked" | "not-found" }> {
  return inTransaction(db, async (tx) => {
    const done = await tx.parcel.updateMany({ where: { id: parcelId }, data: { postedOn: on } });
    return { kind: done.count === 1 ? "marked" : "not-found" };
  });
}

/**
 * Notes that a parcel came back, and puts what can be used again into stock.
 *
 * @param back day, and the supplies that came back, amounts above 0
 */
export async function returnParcel(
  db: Database,
  parcelId: string,
  back: {
    readonly on: string;
    readonly lines: readonly { readonly supplyId: string; readonly amount: Amount }[];
  },
  by: Recorder,
): Promise<{ kind: "returned" | "not-found" }> {
  return inTransaction(db, async (tx) => {
    const done = await tx.parcel.updateMany({ where: { id: parcelId }, data: { returnedOn: back.on } });
    if (done.count === 0) return { kind: "not-found" };
    const { timeZone } = await shopIn(tx);
    const at = shopDay(instant(by.now), timeZone) === back.on ? by.now : endOfDay(day(back.on), timeZone);
    const drafts = back.lines.map((line) => ({
      supplyId: line.supplyId,
      amount: BigInt(line.amount),
      cause: "returned" as const,
      effectiveAt: at,
      effectiveDay: back.on,
      parcelId,
    }));
    await appendMovements(tx, drafts, by);
    return { kind: "returned" };
  });
}

async function standingParcel(tx: Transaction, parcelId: string) {
  return tx.parcel.findUnique({
    where: { id: parcelId },
    include: { pieces: { orderBy: { itemTypeId: "asc" } }, cartons: { orderBy: { position: "asc" } } },
  });
}

function parcelAsBody(parcel: NonNullable<Awaited<ReturnType<typeof standingParcel>>>) {
  return {
    packedOn: parcel.packedOn,
    style: parcel.style,
    zoneId: parcel.zoneId,
    unusual: parcel.unusual,
    pieces: parcel.pieces,
    cartons: parcel.cartons.map((carton) => ({ supplyId: carton.supplyId })),
  };
}
