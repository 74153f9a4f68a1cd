"use client";

import { useRouter } from "next/navigation";
import { useEffect, useReducer, useRef } from "react";
import { instantOfTime, shopDay } from "#lib/units/instant";
import { readAnew } from "../../_parts/read-anew";
import { changedDraft, type DraftChange } from "../draft-change";
import { draftForm } from "../draft-form";
import { draftOfForm } from "../draft-of-form";
import { expectedWeight } from "../expected-weight";
import { newParcelKey } from "../new-parcel-key";
import type { PackingChoices } from "../packing-choices";
import { draftFor, type PackingDraft } from "../packing-draft";
import { piecesWords } from "../parcel-words";
import { ceilingWords } from "../scale-check";
import { useRecording } from "../use-recording";
import { useShopClock } from "../use-shop-clock";
import { weightOutlook } from "../weight-outlook";
import { CartonDetails } from "./carton-details";
import styles from "./pack.module.css";
import { PackingCard } from "./packing-card";
import { PackingSentence } from "./packing-sentence";
import { ParcelDetails } from "./parcel-details";
import { RecordBar } from "./record-bar";
import { RecordingMessages } from "./recording-messages";
import { SpoiltAtBench } from "./spoilt-at-bench";
import { StockAsOf } from "./stock-as-of";
import { StyleDifference } from "./style-difference";
import { TypeChips } from "./type-chips";
import { UseFirstOffer } from "./use-first-offer";
import { WeightBeside } from "./weight-beside";

type PackingDeskProps = {
  readonly choices: PackingChoices;
  /** When the choices were read, in milliseconds since 1970; left out where their age does not matter. */
  readonly readAt?: number;
  /** The parcel to correct; left out, new parcels are recorded one after the other. */
  readonly correcting?: PackingDraft;
};

/** The bench: the sentence, the card, the weight beside it, and the button that records. */
export function PackingDesk({ choices: choicesRead, readAt, correcting }: PackingDeskProps) {
  const router = useRouter();
  const isNew = correcting === undefined;
  const { today, now } = useShopClock(choicesRead.today, choicesRead.timeZone);
  const choices = { ...choicesRead, today };
  const [draft, change] = useReducer(
    (before: PackingDraft, next: DraftChange) => changedDraft(before, next, choices),
    null,
    () => correcting ?? draftFor(choices, choices.itemTypes[0]?.id ?? null, newParcelKey(), choices.today),
  );
  const dayBefore = useRef(today);
  useEffect(() => {
    if (isNew && draft.packedOn === dayBefore.current && draft.packedOn !== today)
      change({ kind: "new-day", packedOn: today });
    dayBefore.current = today;
  }, [isNew, draft.packedOn, today]);
  const recording = useRecording(isNew ? "record" : "correct", (how, id) => {
    if (!isNew) return router.push(`/parcels/${encodeURIComponent(draft.id)}`);
    if (id === draft.id) change({ kind: "next-parcel", id: newParcelKey() });
    if (how !== "kept") void readBenchAnew();
  });
  const weight = expectedWeight(draft, choices);
  const outlook = weightOutlook(draft, weight, choices);
  const names = new Map(choices.itemTypes.map((type) => [type.id, type.name]));
  const undo = async (parcelId: string): Promise<boolean> => {
    const isUndone = await recording.undo(parcelId);
    if (isUndone) void readBenchAnew();
    return isUndone;
  };
  const record = (): void => {
    const packedOn = isNew && draft.packedOn === today ? shopToday(choices.timeZone) : draft.packedOn;
    const form = draftForm({ ...draft, packedOn }, choices.supplies);
    void recording.record({ form, words: piecesWords(draft.pieces, names) });
  };
  return (
    <div className={styles.desk}>
      {isNew ? (
        <TypeChips
          itemTypes={choices.itemTypes}
          chosenId={draft.pieces.length === 1 ? (draft.pieces[0]?.itemTypeId ?? null) : null}
          onChoose={(itemTypeId) => change({ kind: "start-with", itemTypeId, id: newParcelKey() })}
        />
      ) : null}
      <PackingSentence draft={draft} choices={choices} onChange={change} />
      <CartonDetails draft={draft} choices={choices} onChange={change} />
      {isNew ? <UseFirstOffer draft={draft} choices={choices} onChange={change} /> : null}
      {readAt === undefined ? null : (
        <StockAsOf
          readAt={readAt}
          now={now}
          timeZone={choices.timeZone}
          kept={recording.sending.kind === "sending" ? 0 : recording.entries.length}
        />
      )}
      <div className={styles.columns}>
        <PackingCard draft={draft} choices={choices} onChange={change}>
          {isNew ? (
            <SpoiltAtBench draft={draft} choices={choices} onMoved={() => void readBenchAnew()} />
          ) : null}
        </PackingCard>
        <div className={styles.beside}>
          <WeightBeside draft={draft} weight={weight} outlook={outlook} choices={choices} onChange={change} />
          {isNew ? <StyleDifference {...{ draft, outlook, choices }} onChange={change} /> : null}
          <RecordBar
            weight={
              outlook === null || outlook.weight.guess
                ? weight
                : { kind: "expected", mg: outlook.weight.likelyMg }
            }
            ceiling={ceilingWords(draft.promised, choices.measures)}
            measures={choices.measures}
            words={isNew ? "Record this parcel" : "Save the correction"}
            isBusy={recording.sending.kind === "sending"}
            isDisabled={draft.pieces.length === 0}
            onRecord={record}
          >
            <RecordingMessages
              recording={{ ...recording, undo }}
              choices={choices}
              benchId={draft.id}
              onOpen={({ form }) => change({ kind: "open", draft: draftOfForm(form, choices) })}
            />
          </RecordBar>
        </div>
        <ParcelDetails draft={draft} choices={choices} isNew={isNew} onChange={change} />
      </div>
    </div>
  );
}

/** The router's own refresh would leave the packer with the browser's error page where nobody answers. */
async function readBenchAnew(): Promise<void> {
  try {
    await readAnew();
  } catch (error) {
    // Without a connection the figures stay as old as they are, and the screen says so.
    if (!(error instanceof TypeError)) reportError(error);
  }
}

function shopToday(timeZone: string) {
  return shopDay(instantOfTime(Date.now()), timeZone);
}
