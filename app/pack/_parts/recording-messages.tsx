"use client";

import { costValue } from "#lib/units/money";
import { Button } from "../../_parts/button";
import { ButtonLink } from "../../_parts/button-link";
import { Message } from "../../_parts/message";
import { costText } from "../../parcels/cost-text";
import type { OutboxEntry } from "../outbox-entry";
import type { PackingChoices } from "../packing-choices";
import { type RecordedParcel, type Recording, withCountOrder } from "../use-recording";
import { CountOrderMessage } from "./count-order-message";
import { KeptParcels } from "./kept-parcels";
import styles from "./pack.module.css";

/** So many late ones are told one by one; more are summed up, or they would cover the bench of a phone. */
const LATE_ONES_TOLD = 2;

type RecordingMessagesProps = {
  readonly recording: Recording;
  readonly choices: PackingChoices;
  /** Key of the parcel on the bench. */
  readonly benchId: string;
  /** Puts a kept parcel back on the bench. */
  readonly onOpen: (entry: OutboxEntry) => void;
};

/** What became of the parcels just packed: recorded with Undo, asked about, refused, or kept on this device. */
export function RecordingMessages({ recording, choices, benchId, onOpen }: RecordingMessagesProps) {
  const late = recording.recorded.filter((parcel) => parcel.isLate && parcel.undone === "no");
  const isSummedUp = late.length > LATE_ONES_TOLD;
  const told = isSummedUp
    ? recording.recorded.filter((parcel) => !late.includes(parcel))
    : recording.recorded;
  return (
    <div className={styles.messages}>
      <SendingMessage recording={recording} choices={choices} />
      <KeptParcels recording={recording} choices={choices} benchId={benchId} onOpen={onOpen} />
      {isSummedUp ? <LateMessage late={late} /> : null}
      {told.map((parcel) => (
        <RecordedMessage key={parcel.parcelId} parcel={parcel} choices={choices} onUndo={recording.undo} />
      ))}
    </div>
  );
}

type SendingMessageProps = Pick<RecordingMessagesProps, "recording" | "choices">;

function SendingMessage({ recording, choices }: SendingMessageProps) {
  const { sending } = recording;
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
        </Message>
      );
    case "ask-count-order":
      return (
        <CountOrderMessage
          supplyIds={sending.supplies}
          choices={choices}
          onAnswer={(answer) => void recording.record(withCountOrder(sending.parcel, answer))}
        />
      );
    default:
      return sending satisfies never;
  }
}

function LateMessage({ late }: { readonly late: readonly RecordedParcel[] }) {
  const warnings = late.flatMap((parcel) => parcel.warnings);
  return (
    <Message kind="done" title={`Recorded: ${late.length} parcels that were kept on this device.`}>
      {warnings.map((warning) => (
        <p key={warning.message}>
          {warning.message} {warning.wayOut}
        </p>
      ))}
      <ButtonLink href="/parcels">See them under Parcels</ButtonLink>
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
  if (parcel.undone === "never-recorded")
    return <Message kind="done" title={`Undone: ${parcel.words}. It was not recorded.`} />;
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
