"use client";

import { useRef, useState } from "react";
import { sendSpoilt, takeBackSpoilt } from "./send-spoilt";
import type { SpoiltForm } from "./spoilt-form";

/** How long Undo stays, in milliseconds: well over the ten seconds that a packer is promised. */
const UNDO_STAYS_MS = 20_000;

/** A loss as it stands on the bench, before it is sent. */
export type Loss = { readonly form: Omit<SpoiltForm, "shownAfter">; readonly words: string };

/** A loss that was booked a moment ago. */
export type BookedLoss = {
  readonly movementId: number;
  readonly supplyId: string;
  readonly words: string;
  readonly undone: "no" | "undoing" | "yes" | "failed";
};

/** A loss that is not booked, and why. */
export type UnbookedLoss =
  | { readonly kind: "unanswered"; readonly loss: Loss }
  | { readonly kind: "refused"; readonly loss: Loss; readonly words: string }
  /** Another loss of the supply was booked since the bench was read. */
  | { readonly kind: "held"; readonly loss: Loss; readonly isSame: boolean };

/** Booking losses, and taking them back. */
export type Spoiling = {
  readonly isSending: boolean;
  /** One a supply at most. */
  readonly unbooked: readonly UnbookedLoss[];
  readonly booked: readonly BookedLoss[];
  /** Whether it is booked now. */
  readonly book: (loss: Loss) => Promise<boolean>;
  readonly undo: (movementId: number) => Promise<void>;
};

/**
 * Books losses at the bench. A sending that nobody answered may have been booked: it is sent again under what the bench
 * had seen then, so that it is booked once.
 * @param newestLine the newest ledger line that the bench has read
 * @param onMoved called once stock has moved
 */
export function useSpoiling(newestLine: number, onMoved: () => void): Spoiling {
  const [isSending, setSending] = useState(false);
  const [unbooked, setUnbooked] = useState<readonly UnbookedLoss[]>([]);
  const [booked, setBooked] = useState<readonly BookedLoss[]>([]);
  const seen = useRef(new Map<string, number>());
  const unanswered = useRef(new Map<string, SpoiltForm>());

  const tell = (loss: Loss, why: UnbookedLoss | null): void =>
    setUnbooked((list) => [
      ...list.filter((one) => one.loss.form.supplyId !== loss.form.supplyId),
      ...(why === null ? [] : [why]),
    ]);
  const mark = (movementId: number, undone: BookedLoss["undone"]): void =>
    setBooked((list) => list.map((one) => (one.movementId === movementId ? { ...one, undone } : one)));
  const forgetLater = (movementId: number, undone: BookedLoss["undone"]): void => {
    setTimeout(
      () => setBooked((list) => list.filter((one) => one.movementId !== movementId || one.undone !== undone)),
      UNDO_STAYS_MS,
    );
  };

  const book: Spoiling["book"] = async (loss) => {
    const { supplyId } = loss.form;
    const before = unanswered.current.get(supplyId);
    const shownAfter = before?.shownAfter ?? Math.max(newestLine, seen.current.get(supplyId) ?? 0);
    const form = { ...loss.form, shownAfter };
    setSending(true);
    const outcome = await sendSpoilt(form).finally(() => setSending(false));
    if (outcome.kind === "unreachable") {
      unanswered.current.set(supplyId, form);
      tell(loss, { kind: "unanswered", loss });
      return false;
    }
    unanswered.current.delete(supplyId);
    if (outcome.kind === "refused") {
      tell(loss, { kind: "refused", loss, words: outcome.words });
      return false;
    }
    const { kind, movementId } = outcome;
    seen.current.set(supplyId, Math.max(movementId, seen.current.get(supplyId) ?? 0));
    const isOwn = kind === "spoilt" || (kind === "already-spoilt" && isSameLoss(before, form));
    if (!isOwn) {
      tell(loss, { kind: "held", loss, isSame: kind === "already-spoilt" });
      return false;
    }
    tell(loss, null);
    setBooked((list) => [{ movementId, supplyId, words: loss.words, undone: "no" }, ...list]);
    forgetLater(movementId, "no");
    onMoved();
    return true;
  };

  const undo: Spoiling["undo"] = async (movementId) => {
    mark(movementId, "undoing");
    const isDone = await takeBackSpoilt(movementId);
    mark(movementId, isDone ? "yes" : "failed");
    if (!isDone) return;
    forgetLater(movementId, "yes");
    onMoved();
  };

  return { isSending, unbooked, booked, book, undo };
}

function isSameLoss(one: SpoiltForm | undefined, other: SpoiltForm): boolean {
  return one !== undefined && JSON.stringify(one) === JSON.stringify(other);
}
