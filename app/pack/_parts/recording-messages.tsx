"use client";

import { costValue } from "#lib/units/money";
import { Button } from "../../_parts/button";
import { Message } from "../../_parts/message";
import { costText } from "../../parcels/cost-text";
import type { PackingChoices } from "../packing-choices";
import { type RecordedParcel, type Recording, withCountOrder } from "../use-recording";
import styles from "./pack.module.css";

type RecordingMessagesProps = { readonly recording: Recording; readonly choices: PackingChoices };

/** What became of the parcels just packed: recorded with Undo, asked about, refused, or kept on this device. */
export function RecordingMessages({ recording, choices }: RecordingMessagesProps) {
  return (
    <div className={styles.messages}>
      <SendingMessage recording={recording} choices={choices} />
      <UnsentMessage recording={recording} />
      {recording.recorded.map((parcel) => (
        <RecordedMessage key={parcel.parcelId} parcel={parcel} choices={choices} onUndo={recording.undo} />
      ))}
    </div>
  );
}

function SendingMessage({ recording, choices }: RecordingMessagesProps) {
  const { sending, unsent } = recording;
  switch (sending.kind) {
    case "ready":
    case "sending":
      return null;
    case "refused":
      return (
        <Message kind="error" title={`${sending.parcel.words} is not recorded.`}>
          {sending.problems.map((problem) => (
            <p key={problem.field + problem.message}>
              {problem.message} {problem.wayOut}
            </p>
          ))}
          {unsent.some((kept) => kept.form.id === sending.parcel.form.id) ? (
            <Button onPress={() => recording.withdraw(sending.parcel.form.id)}>Drop this kept parcel</Button>
          ) : null}
        </Message>
      );
    case "ask-count-order": {
      const names = sending.supplies.map(
        (id) => choices.supplies.find((supply) => supply.id === id)?.name ?? id,
      );
      return (
        <Message kind="error" title="Was it packed before or after the count of that day?">
          <p>
            {names.join(", ")} was counted on the day packed. The count may have seen this parcel already, or
            not.
          </p>
          <div className={styles.answers}>
            <Button onPress={() => void recording.record(withCountOrder(sending.parcel, "before"))}>
              Before the count
            </Button>
            <Button onPress={() => void recording.record(withCountOrder(sending.parcel, "after"))}>
              After the count
            </Button>
          </div>
        </Message>
      );
    }
    default:
      return sending satisfies never;
  }
}

function UnsentMessage({ recording }: { readonly recording: Recording }) {
  const { unsent } = recording;
  if (unsent.length === 0) return null;
  const title =
    unsent.length === 1
      ? "One parcel is kept on this device and not recorded yet."
      : `${unsent.length} parcels are kept on this device and not recorded yet.`;
  return (
    <Message kind="error" title={title}>
      <p>
        The program did not answer, or failed: {unsent.map((parcel) => parcel.words).join("; ")}. You can go
        on packing; each is recorded once.
      </p>
      <Button onPress={() => void recording.sendUnsent()}>Try again</Button>
    </Message>
  );
}

type RecordedMessageProps = {
  readonly parcel: RecordedParcel;
  readonly choices: PackingChoices;
  readonly onUndo: Recording["undo"];
};

function RecordedMessage({ parcel, choices, onUndo }: RecordedMessageProps) {
  if (parcel.undone === "yes")
    return <Message kind="done" title={`Undone: ${parcel.words}. The stock is back.`} />;
  const cost = parcel.costValue === null ? "" : `, ${costText(costValue(parcel.costValue), choices)} to pack`;
  return (
    <Message kind="done" title={`Recorded: ${parcel.words}${cost}.`}>
      {parcel.warnings.map((warning) => (
        <p key={warning.message}>
          {warning.message} {warning.wayOut}
        </p>
      ))}
      {parcel.undone === "failed" ? (
        <p role="alert">Not undone: nobody answered. Try again, or void it under Parcels.</p>
      ) : null}
      <Button isDisabled={parcel.undone === "undoing"} onPress={() => void onUndo(parcel.parcelId)}>
        Undo
      </Button>
    </Message>
  );
}
