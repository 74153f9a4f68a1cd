"use client";

import { useRouter } from "next/navigation";
import { useReducer } from "react";
import { instantOfTime, shopDay } from "#lib/units/instant";
import { changedDraft, type DraftChange } from "../draft-change";
import { draftForm } from "../draft-form";
import { expectedWeight } from "../expected-weight";
import type { PackingChoices } from "../packing-choices";
import { draftFor, type PackingDraft } from "../packing-draft";
import { parcelKey } from "../parcel-key";
import { piecesWords } from "../parcel-words";
import { useRecording } from "../use-recording";
import { CartonDetails } from "./carton-details";
import styles from "./pack.module.css";
import { PackingCard } from "./packing-card";
import { PackingSentence } from "./packing-sentence";
import { ParcelDetails } from "./parcel-details";
import { RecordBar } from "./record-bar";
import { RecordingMessages } from "./recording-messages";
import { TypeChips } from "./type-chips";
import { WeightBeside } from "./weight-beside";

type PackingDeskProps = {
  readonly choices: PackingChoices;
  /** The parcel to correct; left out, new parcels are recorded one after the other. */
  readonly correcting?: PackingDraft;
};

/** The bench: the sentence, the card, the weight beside it, and the button that records. */
export function PackingDesk({ choices, correcting }: PackingDeskProps) {
  const router = useRouter();
  const isNew = correcting === undefined;
  const [draft, change] = useReducer(
    (before: PackingDraft, next: DraftChange) => changedDraft(before, next, choices),
    null,
    () => correcting ?? draftFor(choices, choices.itemTypes[0]?.id ?? null, newKey(), choices.today),
  );
  const recording = useRecording(isNew ? "record" : "correct", (how) => {
    if (!isNew) return router.push(`/parcels/${encodeURIComponent(draft.id)}`);
    if (how !== "recorded-later") change({ kind: "next-parcel", id: newKey() });
    // Where nobody answers, asking for the screen again would leave the packer with the browser's own error page.
    if (how !== "kept") router.refresh();
  });
  const weight = expectedWeight(draft, choices);
  const names = new Map(choices.itemTypes.map((type) => [type.id, type.name]));
  const undo = async (parcelId: string): Promise<boolean> => {
    const isUndone = await recording.undo(parcelId);
    if (isUndone) router.refresh();
    return isUndone;
  };
  const record = (): void => {
    const packedOn = isNew && draft.packedOn === choices.today ? shopToday(choices.timeZone) : draft.packedOn;
    const form = draftForm({ ...draft, packedOn }, choices.supplies);
    void recording.record({ form, words: piecesWords(draft.pieces, names) });
  };
  return (
    <div className={styles.desk}>
      {isNew ? (
        <TypeChips
          itemTypes={choices.itemTypes}
          chosenId={draft.pieces.length === 1 ? (draft.pieces[0]?.itemTypeId ?? null) : null}
          onChoose={(itemTypeId) => change({ kind: "start-with", itemTypeId, id: newKey() })}
        />
      ) : null}
      <PackingSentence draft={draft} choices={choices} onChange={change} />
      <CartonDetails draft={draft} choices={choices} onChange={change} />
      <div className={styles.columns}>
        <PackingCard draft={draft} choices={choices} onChange={change} />
        <div className={styles.beside}>
          <WeightBeside draft={draft} weight={weight} choices={choices} onChange={change} />
          <RecordBar
            weight={weight}
            measures={choices.measures}
            words={isNew ? "Record this parcel" : "Save the correction"}
            isBusy={recording.sending.kind === "sending"}
            isDisabled={draft.pieces.length === 0}
            onRecord={record}
          >
            <RecordingMessages recording={{ ...recording, undo }} choices={choices} />
          </RecordBar>
        </div>
        <ParcelDetails draft={draft} choices={choices} isNew={isNew} onChange={change} />
      </div>
    </div>
  );
}

function newKey(): string {
  return parcelKey((bytes) => {
    crypto.getRandomValues(bytes as Uint8Array<ArrayBuffer>);
  });
}

function shopToday(timeZone: string) {
  return shopDay(instantOfTime(Date.now()), timeZone);
}
