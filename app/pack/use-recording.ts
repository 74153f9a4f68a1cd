"use client";

import { useCallback, useEffect, useRef, useState } from "react";
import type { ParcelProblem } from "../parcels/parcel-problem";
import type { EntryOutcome } from "./outbox";
import type { OutboxEntry, PackedParcel } from "./outbox-entry";
import { type SendOutcome, type SendPurpose, sendParcel, takeBackParcel } from "./send-parcel";
import { useOutbox } from "./use-outbox";

/** How long Undo stays, in milliseconds: well over the ten seconds that a packer is promised. */
const UNDO_STAYS_MS = 20_000;
/** The parcel is safe on this device by then: the bench does not wait longer for a slow answer. */
const BENCH_WAITS_MS = 3_000;

/** A parcel that was recorded a moment ago. */
export type RecordedParcel = {
  readonly parcelId: string;
  readonly words: string;
  readonly costValue: number | null;
  readonly warnings: readonly ParcelProblem[];
  readonly undone: "no" | "undoing" | "yes" | "failed" | "never-recorded";
  /** It had been kept on this device, and went out by itself. */
  readonly isLate: boolean;
};

/** Where a sending stands that was not kept first: a correction, or any where this device can't keep parcels. */
export type Sending =
  | { readonly kind: "ready" }
  | { readonly kind: "sending" }
  | { readonly kind: "refused"; readonly parcel: PackedParcel; readonly problems: readonly ParcelProblem[] }
  | { readonly kind: "ask-count-order"; readonly parcel: PackedParcel; readonly supplies: readonly string[] };

/** Sending, undo and what waits on this device; the screen draws it and says what happens next. */
export type Recording = {
  readonly sending: Sending;
  readonly recorded: readonly RecordedParcel[];
  /** Parcels kept on this device, oldest first. */
  readonly entries: readonly OutboxEntry[];
  readonly canKeep: boolean;
  readonly record: (parcel: PackedParcel) => Promise<void>;
  /** Whether it is taken back now. */
  readonly undo: (parcelId: string) => Promise<boolean>;
  readonly sendWaiting: () => void;
  readonly withdraw: (entry: OutboxEntry) => Promise<void>;
  readonly answerCountOrder: (entry: OutboxEntry, countedSameDay: "before" | "after") => Promise<void>;
};

/** How a parcel left the bench: recorded at once, kept on this device, or kept before and recorded now. */
export type Taken = "recorded" | "kept" | "recorded-later";

/**
 * Records parcels: keeps each on this device, sends it, and lets go of it once it is recorded.
 * @param purpose record new parcels, or correct the one on the bench
 * @param onTaken called once a parcel is recorded or safely kept, with its key, so that the bench is free for the next;
 *   the key is null where several kept ones were recorded
 * @returns the state and what can be done
 */
export function useRecording(
  purpose: SendPurpose,
  onTaken: (how: Taken, id: string | null) => void,
): Recording {
  const [sending, setSending] = useState<Sending>({ kind: "ready" });
  const [recorded, setRecorded] = useState<readonly RecordedParcel[]>([]);
  const taken = useRef(onTaken);
  const isAnyLate = useRef(false);
  useEffect(() => {
    taken.current = onTaken;
  });

  const show = useCallback((shown: RecordedParcel): void => {
    const { parcelId, undone } = shown;
    setRecorded((list) => [shown, ...list.filter((one) => one.parcelId !== parcelId)]);
    setTimeout(() => {
      setRecorded((list) => list.filter((one) => one.parcelId !== parcelId || one.undone !== undone));
    }, UNDO_STAYS_MS);
  }, []);

  const showLate = ({ id, words }: OutboxEntry, outcome: EntryOutcome): void => {
    if (outcome.kind === "recorded") show(recordedParcel(words, outcome, true));
    else if (outcome.kind === "taken-back")
      show(takenBack(id, words, outcome.wasRecorded ? "yes" : "never-recorded"));
    else return;
    isAnyLate.current = true;
  };

  const outbox = useOutbox(purpose === "record", {
    onOutcome: showLate,
    onSent: () => {
      if (!isAnyLate.current) return;
      isAnyLate.current = false;
      taken.current("recorded-later", null);
    },
  });

  /** Sends without keeping first; what is not recorded stays on the bench. */
  const recordAtOnce = async (parcel: PackedParcel): Promise<void> => {
    const outcome = await sendParcel(parcel.form, purpose);
    setSending(sendingAfter(parcel, outcome, purpose));
    if (outcome.kind !== "recorded") return;
    show(recordedParcel(parcel.words, outcome, false));
    taken.current("recorded", parcel.form.id);
  };

  const record = async (parcel: PackedParcel): Promise<void> => {
    const { id } = parcel.form;
    setSending({ kind: "sending" });
    const isKept = purpose === "record" && (await outbox.keep(parcel));
    if (!isKept) return recordAtOnce(parcel);
    const sent = outbox.send(id);
    const outcome = await Promise.race([sent, soon()]);
    setSending({ kind: "ready" });
    if (outcome === null) {
      taken.current("kept", id);
      await showWhenSent(parcel.words, sent);
    } else if (outcome.kind === "recorded") {
      show(recordedParcel(parcel.words, outcome, false));
      taken.current("recorded", id);
      outbox.sendWaiting();
      // A refused parcel stays on the bench to be mended.
    } else if (outcome.kind !== "refused") taken.current("kept", id);
  };

  const showWhenSent = async (words: string, sent: Promise<EntryOutcome>): Promise<void> => {
    const outcome = await sent;
    if (outcome.kind !== "recorded") return;
    show(recordedParcel(words, outcome, true));
    taken.current("recorded-later", outcome.parcelId);
  };

  const answerCountOrder: Recording["answerCountOrder"] = async (entry, countedSameDay) => {
    const outcome = await outbox.answerCountOrder(entry.id, countedSameDay);
    if (outcome.kind !== "recorded") return;
    show(recordedParcel(entry.words, outcome, false));
    taken.current("recorded-later", entry.id);
  };

  const undo = async (parcelId: string): Promise<boolean> => {
    setRecorded((list) => marked(list, parcelId, "undoing"));
    const { kind } = await takeBackParcel(parcelId);
    const isDone = kind !== "unreachable";
    setRecorded((list) => marked(list, parcelId, isDone ? "yes" : "failed"));
    if (isDone)
      setTimeout(() => setRecorded((list) => list.filter((one) => one.parcelId !== parcelId)), UNDO_STAYS_MS);
    return isDone;
  };

  const withdraw = async (entry: OutboxEntry): Promise<void> => {
    const mustTell = await outbox.withdraw(entry);
    if (!mustTell) show(takenBack(entry.id, entry.words, "never-recorded"));
  };

  const { entries, canKeep, sendWaiting } = outbox;
  return { sending, recorded, entries, canKeep, record, undo, sendWaiting, withdraw, answerCountOrder };
}

type Recorded = Extract<SendOutcome, { kind: "recorded" }>;

function recordedParcel(words: string, outcome: Recorded, isLate: boolean): RecordedParcel {
  const { parcelId, costValue, warnings } = outcome;
  return { parcelId, costValue, warnings, words, isLate, undone: "no" };
}

function takenBack(parcelId: string, words: string, undone: "yes" | "never-recorded"): RecordedParcel {
  return { parcelId, words, undone, costValue: null, warnings: [], isLate: false };
}

function sendingAfter(parcel: PackedParcel, outcome: SendOutcome, purpose: SendPurpose): Sending {
  switch (outcome.kind) {
    case "recorded":
      return { kind: "ready" };
    case "refused":
      return { kind: "refused", parcel, problems: outcome.problems };
    case "ask-count-order":
      return { kind: "ask-count-order", parcel, supplies: outcome.supplies };
    case "unreachable":
      return { kind: "refused", parcel, problems: [purpose === "record" ? NOT_KEPT : NOT_SAVED] };
  }
  return outcome satisfies never;
}

const NOT_SAVED: ParcelProblem = {
  field: "",
  message: "Nobody answered, so the correction is not saved yet.",
  wayOut: "Everything you changed is still here. Check that the program runs and press the button again.",
};

const NOT_KEPT: ParcelProblem = {
  field: "",
  message: "Nobody answered, and this device can't keep the parcel.",
  wayOut:
    "It is still on the bench: leave it as it is and press the button again once the connection is back.",
};

/** Null, once the bench has waited long enough. */
function soon(): Promise<null> {
  return new Promise((resolve) => {
    setTimeout(() => resolve(null), BENCH_WAITS_MS);
  });
}

function marked(
  list: readonly RecordedParcel[],
  parcelId: string,
  undone: RecordedParcel["undone"],
): readonly RecordedParcel[] {
  return list.map((one) => (one.parcelId === parcelId ? { ...one, undone } : one));
}

/** The same parcel with the packer's answer: was it packed before the count of that day, or after? */
export function withCountOrder(parcel: PackedParcel, countedSameDay: "before" | "after"): PackedParcel {
  return { ...parcel, form: { ...parcel.form, countedSameDay } };
}
