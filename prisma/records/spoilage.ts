import type { Amount } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { endOfDay, instant, shopDay } from "#lib/units/instant";
import { type Database, inTransaction, type Transaction } from "../client";
import { appendMovements, type MovementDraft, type Recorder } from "./ledger";
import { reverseMovement } from "./movements";
import { shopIn } from "./shop";

/** Torn tissue, a wet carton, the end of a roll. */
export type Spoilage = {
  readonly supplyId: string;
  /** Above 0. */
  readonly amount: Amount;
  readonly typedValue: string;
  readonly typedUnit: string;
  /** Why. */
  readonly words: string;
  readonly on: string;
  /**
   * The form's key: the supply's newest ledger line when the form was shown, 0 for none. A form books at
   * most once, because its own booking is a later line. Left out by a loader that runs once.
   */
  readonly shownAfter?: number;
};

/** `movementId` is the line of the loss: the one just booked, or the one that was booked before. */
type SpoilageOutcome =
  | { readonly kind: "spoilt" | "already-spoilt" | "spoilt-since"; readonly movementId: number }
  | { readonly kind: "unknown"; readonly field: string; readonly id: string };

/**
 * Books what was spoilt out of stock, at the supply's cost.
 *
 * @param db the open database
 * @param spoilt what was lost
 * @param by who records, and when
 * @returns "already-spoilt" where the same form booked the same before, "spoilt-since" where the supply's
 *   ledger has another loss that the form had not seen; nothing is booked in either case
 */
export async function recordSpoilage(db: Database, spoilt: Spoilage, by: Recorder): Promise<SpoilageOutcome> {
  return inTransaction(db, async (tx) => {
    if ((await tx.supply.findUnique({ where: { id: spoilt.supplyId } })) === null) {
      return { kind: "unknown", field: "supplyId", id: spoilt.supplyId };
    }
    const { timeZone } = await shopIn(tx);
    const at = shopDay(instant(by.now), timeZone) === spoilt.on ? by.now : endOfDay(day(spoilt.on), timeZone);
    const draft = {
      supplyId: spoilt.supplyId,
      amount: -BigInt(spoilt.amount),
      cause: "spoilt" as const,
      effectiveDay: spoilt.on,
      typedValue: spoilt.typedValue,
      typedUnit: spoilt.typedUnit,
      words: spoilt.words,
    };
    const before = await spoiltSince(tx, draft, spoilt.shownAfter);
    if (before !== null) return before;
    await appendMovements(tx, [{ ...draft, effectiveAt: at }], by);
    const booked = await tx.movement.findFirstOrThrow({
      where: { supplyId: spoilt.supplyId, cause: draft.cause },
      orderBy: { id: "desc" },
      select: { id: true },
    });
    return { kind: "spoilt", movementId: booked.id };
  });
}

/**
 * Takes a loss back. A line that is no loss is not touched.
 *
 * @param db the open database
 * @param movementId the line of the loss
 * @param by who takes it back, and when
 */
export async function takeBackSpoilage(
  db: Database,
  movementId: number,
  by: Recorder,
): Promise<{ readonly kind: "reversed" | "already-reversed" | "not-found" }> {
  const loss = await db.movement.findFirst({ where: { id: movementId, cause: "spoilt", reversesId: null } });
  if (loss === null) return { kind: "not-found" };
  const outcome = await reverseMovement(db, movementId, "undone", by);
  return outcome.kind === "not-reversible" ? { kind: "not-found" } : outcome;
}

/** What the ledger says of losses since the form was shown; null where there were none. */
async function spoiltSince(
  tx: Transaction,
  draft: Omit<MovementDraft, "effectiveAt">,
  shownAfter: number | undefined,
): Promise<SpoilageOutcome | null> {
  if (shownAfter === undefined) return null;
  const { supplyId, cause } = draft;
  const later = await tx.movement.findMany({
    where: { supplyId, cause, id: { gt: shownAfter } },
    orderBy: { id: "asc" },
  });
  const losses = later.filter((movement) => movement.reversesId === null);
  const newest = losses.at(-1);
  if (newest === undefined) return null;
  const same = losses.find(
    (loss) =>
      loss.amount === draft.amount &&
      loss.effectiveDay === draft.effectiveDay &&
      loss.typedValue === draft.typedValue &&
      loss.typedUnit === draft.typedUnit &&
      loss.words === draft.words,
  );
  if (same === undefined) return { kind: "spoilt-since", movementId: newest.id };
  return { kind: "already-spoilt", movementId: same.id };
}
