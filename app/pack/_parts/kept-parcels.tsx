"use client";

import { Button } from "../../_parts/button";
import { Message } from "../../_parts/message";
import { clockText } from "../clock-text";
import type { OutboxEntry } from "../outbox-entry";
import type { PackingChoices } from "../packing-choices";
import type { Recording } from "../use-recording";
import { CountOrderMessage } from "./count-order-message";
import styles from "./pack.module.css";

type KeptParcelsProps = {
  readonly recording: Recording;
  readonly choices: PackingChoices;
  /** Key of the parcel on the bench. */
  readonly benchId: string;
  readonly onOpen: (entry: OutboxEntry) => void;
};

/** The parcels kept on this device, by what they wait for. Those on their way for the first time are not told of. */
export function KeptParcels({ recording, choices, benchId, onOpen }: KeptParcelsProps) {
  const { entries, canKeep, sending } = recording;
  const waiting = entries.filter(
    ({ id, state }) => state.kind === "waiting" && !(sending.kind === "sending" && id === benchId),
  );
  const withdrawn = entries.filter(({ state }) => state.kind === "withdrawn");
  return (
    <>
      {canKeep ? null : (
        <Message
          kind="note"
          title="This device can't keep parcels: its storage for this page is blocked or full."
        >
          Each parcel is sent at once and needs a connection. Leave the private window, or free some storage,
          and load the screen again.
        </Message>
      )}
      {entries.map((entry) =>
        entry.state.kind === "refused" || entry.state.kind === "ask-count-order" ? (
          <StuckParcel
            key={entry.id}
            entry={entry}
            isOnBench={entry.id === benchId}
            {...{ recording, choices, onOpen }}
          />
        ) : null,
      )}
      <WaitingParcels waiting={waiting} recording={recording} timeZone={choices.timeZone} />
      <WithdrawnParcels withdrawn={withdrawn} />
    </>
  );
}

type StuckParcelProps = Pick<KeptParcelsProps, "recording" | "choices" | "onOpen"> & {
  readonly entry: OutboxEntry;
  readonly isOnBench: boolean;
};

/** A parcel that goes no further without its packer. */
function StuckParcel({ entry, isOnBench, recording, choices, onOpen }: StuckParcelProps) {
  const ways = isOnBench ? null : (
    <>
      <Button onPress={() => onOpen(entry)}>Open it</Button>
      <Button onPress={() => void recording.withdraw(entry)}>Drop it</Button>
    </>
  );
  if (entry.state.kind === "ask-count-order") {
    return (
      <CountOrderMessage
        supplyIds={entry.state.supplies}
        choices={choices}
        onAnswer={(answer) => void recording.answerCountOrder(entry, answer)}
        {...(isOnBench ? {} : { words: entry.words })}
      >
        {ways}
      </CountOrderMessage>
    );
  }
  if (entry.state.kind !== "refused") return null;
  return (
    <Message kind="error" title={`${entry.words} is not recorded.`}>
      {entry.state.problems.map((problem) => (
        <p key={problem.field + problem.message}>
          {problem.message} {problem.wayOut}
        </p>
      ))}
      <p>{isOnBench ? "It is still on the bench." : "It is kept on this device."}</p>
      <div className={styles.answers}>{ways}</div>
    </Message>
  );
}

type WaitingParcelsProps = {
  readonly waiting: readonly OutboxEntry[];
  readonly recording: Recording;
  readonly timeZone: string;
};

/** How many wait, and since when. The last one can be undone at once; the others stand behind a fold. */
function WaitingParcels({ waiting, recording, timeZone }: WaitingParcelsProps) {
  const [first] = waiting;
  const last = waiting.at(-1);
  if (first === undefined || last === undefined) return null;
  const since = clockText(first.keptAt, Date.now(), timeZone);
  const title =
    waiting.length === 1
      ? "One parcel is kept on this device and not recorded yet."
      : `${waiting.length} parcels are kept on this device and not recorded yet.`;
  return (
    <Message kind="error" title={title}>
      <p>
        No answer since {since}. Go on packing: each is recorded once, as soon as the program answers. Last:{" "}
        {last.words}.
      </p>
      <div className={styles.answers}>
        <Button onPress={recording.sendWaiting}>Try again</Button>
        <Button onPress={() => void recording.withdraw(last)}>Undo the last</Button>
      </div>
      {waiting.length === 1 ? null : (
        <details className={styles.kept}>
          <summary>All {waiting.length}, oldest first</summary>
          <ul>
            {waiting.map((entry) => (
              <li key={entry.id}>
                {clockText(entry.keptAt, Date.now(), timeZone)} {entry.words}{" "}
                <Button
                  tone="plain"
                  aria-label={`Undo ${entry.words} of ${clockText(entry.keptAt, Date.now(), timeZone)}`}
                  onPress={() => void recording.withdraw(entry)}
                >
                  Undo
                </Button>
              </li>
            ))}
          </ul>
        </details>
      )}
    </Message>
  );
}

function WithdrawnParcels({ withdrawn }: { readonly withdrawn: readonly OutboxEntry[] }) {
  const [one, ...others] = withdrawn;
  if (one === undefined) return null;
  const what = others.length === 0 ? one.words : `${withdrawn.length} parcels`;
  return (
    <Message kind="note" title={`Taken back, and the program still has to be told: ${what}.`}>
      A sending was not answered, so the book may hold {others.length === 0 ? "it" : "them"}. What it holds is
      taken out as soon as the program answers.
    </Message>
  );
}
