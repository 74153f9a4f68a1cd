"use client";

import { useRouter } from "next/navigation";
import { useState } from "react";
import { day, isDay } from "#lib/units/day";
import { Button } from "../../../_parts/button";
import { Field } from "../../../_parts/field";
import { RecordingMessages } from "../../_parts/recording-messages";
import { draftForm } from "../../draft-form";
import { newParcelKey } from "../../new-parcel-key";
import type { PackingChoices } from "../../packing-choices";
import { piecesWords } from "../../parcel-words";
import { useRecording } from "../../use-recording";
import { draftOfRow, emptyRow, piecesProblem, ROWS_AT_FIRST, type SeveralRow } from "../several-rows";
import styles from "./several.module.css";
import { SeveralRowFields } from "./several-row-fields";

/** The rows, the day over them, and the button that records all of them. */
export function SeveralParcels({ choices }: { readonly choices: PackingChoices }) {
  const router = useRouter();
  const [packedOn, setPackedOn] = useState<string>(choices.today);
  const [rows, setRows] = useState<readonly SeveralRow[]>(() => blankRows());
  const [isSending, setSending] = useState(false);
  const recording = useRecording("record", () => undefined);
  const filled = rows.filter((row) => row.itemTypeId !== "");
  const isSound =
    isDay(packedOn) && packedOn <= choices.today && rows.every((row) => piecesProblem(row.pieces) === null);
  const names = new Map(choices.itemTypes.map((type) => [type.id, type.name]));
  const change = (at: number, part: Partial<SeveralRow>): void =>
    setRows((all) => all.map((row, place) => (place === at ? { ...row, ...part } : row)));
  const recordAll = async (): Promise<void> => {
    setSending(true);
    for (const row of filled) {
      const draft = draftOfRow(row, choices, day(packedOn));
      if (draft === null) continue;
      await recording.record({
        form: draftForm(draft, choices.supplies),
        words: piecesWords(draft.pieces, names),
      });
    }
    setRows(blankRows());
    setSending(false);
  };
  return (
    <form
      className={styles.form}
      aria-label="Several parcels"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void recordAll();
      }}
    >
      <Field
        label="All packed on"
        type="date"
        size="short"
        value={packedOn}
        onChange={setPackedOn}
        {...(isDay(packedOn) && packedOn <= choices.today
          ? {}
          : { error: "Choose today or an earlier day." })}
      />
      <ol className={styles.rows}>
        {rows.map((row, at) => (
          <SeveralRowFields
            key={row.id}
            row={row}
            number={at + 1}
            choices={choices}
            draft={isDay(packedOn) ? draftOfRow(row, choices, day(packedOn)) : null}
            onChange={(part) => change(at, part)}
          />
        ))}
      </ol>
      <div className={styles.end}>
        <Button onPress={() => setRows((all) => [...all, emptyRow(newParcelKey())])}>One more row</Button>
        <Button type="submit" tone="primary" isDisabled={filled.length === 0 || !isSound || isSending}>
          {isSending ? "Recording…" : recordWords(filled.length)}
        </Button>
      </div>
      <RecordingMessages
        recording={recording}
        choices={choices}
        benchId=""
        onOpen={() => router.push("/pack")}
      />
    </form>
  );
}

function blankRows(): readonly SeveralRow[] {
  return Array.from({ length: ROWS_AT_FIRST }, () => emptyRow(newParcelKey()));
}

function recordWords(count: number): string {
  if (count === 0) return "Record these parcels";
  return count === 1 ? "Record this parcel" : `Record these ${count} parcels`;
}
