"use client";

import { useCallback, useEffect, useRef, useState } from "react";
import type { ParcelFormInput } from "../parcels/parcel-form";
import type { ParcelProblem } from "../parcels/parcel-problem";
import { type SendOutcome, type SendPurpose, sendParcel, undoParcel } from "./send-parcel";
import { forgetUnsent, keepUnsent, type UnsentParcel, unsentParcels } from "./unsent-parcels";

/** How long Undo stays, in milliseconds: well over the ten seconds that a packer is promised. */
const UNDO_STAYS_MS = 20_000;

/** A parcel that was recorded a moment ago. */
export type RecordedParcel = {
  readonly parcelId: string;
  readonly words: string;
  readonly costValue: number | null;
  readonly warnings: readonly ParcelProblem[];
  readonly undone: "no" | "undoing" | "yes" | "failed";
};

/** Where the sending of the parcel on the bench stands. */
export type Sending =
  | { readonly kind: "ready" }
  | { readonly kind: "sending" }
  | { readonly kind: "refused"; readonly parcel: UnsentParcel; readonly problems: readonly ParcelProblem[] }
  | { readonly kind: "ask-count-order"; readonly parcel: UnsentParcel; readonly supplies: readonly string[] };

/** Sending, undo and what waits on this device; the screen draws it and says what happens next. */
export type Recording = {
  readonly sending: Sending;
  readonly recorded: readonly RecordedParcel[];
  readonly unsent: readonly UnsentParcel[];
  readonly record: (parcel: UnsentParcel) => Promise<void>;
  /** Whether it is taken back now. */
  readonly undo: (parcelId: string) => Promise<boolean>;
  readonly sendUnsent: () => Promise<void>;
  readonly withdraw: (id: string) => void;
};

/** How a parcel left the bench: recorded at once, kept on this device, or kept before and recorded now. */
export type Taken = "recorded" | "kept" | "recorded-later";

/**
 * Records parcels and remembers what could not be sent.
 * @param purpose record new parcels, or correct the one on the bench
 * @param onTaken called once a parcel is recorded or safely kept, so that the bench is free for the next
 * @returns the state and what can be done
 */
export function useRecording(purpose: SendPurpose, onTaken: (how: Taken) => void): Recording {
  const [sending, setSending] = useState<Sending>({ kind: "ready" });
  const [recorded, setRecorded] = useState<readonly RecordedParcel[]>([]);
  const [unsent, setUnsent] = useState<readonly UnsentParcel[]>([]);
  const taken = useRef(onTaken);
  useEffect(() => {
    taken.current = onTaken;
  });

  const settle = useCallback(
    (parcel: UnsentParcel, outcome: SendOutcome) => {
      switch (outcome.kind) {
        case "recorded":
          forgetUnsent(localStorage, parcel.form.id);
          setRecorded((list) => [{ ...outcome, words: parcel.words, undone: "no" }, ...list]);
          setTimeout(() => {
            setRecorded((list) =>
              list.filter((one) => one.parcelId !== outcome.parcelId || one.undone !== "no"),
            );
          }, UNDO_STAYS_MS);
          setSending({ kind: "ready" });
          break;
        case "refused":
          setSending({ kind: "refused", parcel, problems: outcome.problems });
          break;
        case "ask-count-order":
          setSending({ kind: "ask-count-order", parcel, supplies: outcome.supplies });
          break;
        case "unreachable":
          if (purpose === "record") keepUnsent(localStorage, parcel);
          setSending(
            purpose === "record"
              ? { kind: "ready" }
              : { kind: "refused", parcel, problems: [NOBODY_ANSWERED] },
          );
          break;
        default:
          outcome satisfies never;
      }
      setUnsent(unsentParcels(localStorage));
    },
    [purpose],
  );

  const record = async (parcel: UnsentParcel): Promise<void> => {
    setSending({ kind: "sending" });
    const outcome = await sendParcel(parcel.form, purpose);
    settle(parcel, outcome);
    if (outcome.kind === "recorded") onTaken("recorded");
    if (outcome.kind === "unreachable" && purpose === "record") onTaken("kept");
  };

  const sendUnsent = useCallback(async (): Promise<void> => {
    for (const parcel of unsentParcels(localStorage)) {
      const outcome = await sendParcel(parcel.form, "record");
      settle(parcel, outcome);
      if (outcome.kind !== "recorded") return;
      taken.current("recorded-later");
    }
  }, [settle]);

  const undo = async (parcelId: string): Promise<boolean> => {
    setRecorded((list) => marked(list, parcelId, "undoing"));
    const done = await undoParcel(parcelId);
    setRecorded((list) => marked(list, parcelId, done ? "yes" : "failed"));
    if (!done) return false;
    setTimeout(() => setRecorded((list) => list.filter((one) => one.parcelId !== parcelId)), UNDO_STAYS_MS);
    return true;
  };

  const withdraw = (id: string): void => {
    forgetUnsent(localStorage, id);
    setUnsent(unsentParcels(localStorage));
    setSending({ kind: "ready" });
  };

  useEffect(() => {
    const send = (): void => {
      void sendUnsent();
    };
    setUnsent(unsentParcels(localStorage));
    send();
    window.addEventListener("online", send);
    return () => window.removeEventListener("online", send);
  }, [sendUnsent]);

  return { sending, recorded, unsent, record, undo, sendUnsent, withdraw };
}

const NOBODY_ANSWERED: ParcelProblem = {
  field: "",
  message: "Nobody answered, so the correction is not saved yet.",
  wayOut: "Everything you changed is still here. Check that the program runs and press the button again.",
};

function marked(
  list: readonly RecordedParcel[],
  parcelId: string,
  undone: RecordedParcel["undone"],
): readonly RecordedParcel[] {
  return list.map((one) => (one.parcelId === parcelId ? { ...one, undone } : one));
}

/** The same parcel with the packer's answer: was it packed before the count of that day, or after? */
export function withCountOrder(parcel: UnsentParcel, countedSameDay: "before" | "after"): UnsentParcel {
  return { ...parcel, form: { ...parcel.form, countedSameDay } satisfies ParcelFormInput };
}
