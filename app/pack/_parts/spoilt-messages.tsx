"use client";

import { Button } from "../../_parts/button";
import { Message } from "../../_parts/message";
import type { BookedLoss, Spoiling, UnbookedLoss } from "../use-spoiling";

type SpoiltMessagesProps = {
  readonly spoiling: Spoiling;
  /** Whether what is said of a supply belongs here. */
  readonly isHere: (supplyId: string) => boolean;
};

/** What became of a loss: booked with Undo, held back, refused, or not answered. */
export function SpoiltMessages({ spoiling, isHere }: SpoiltMessagesProps) {
  const { unbooked, booked, book } = spoiling;
  return (
    <>
      {unbooked
        .filter(({ loss }) => isHere(loss.form.supplyId))
        .map((each) => (
          <UnbookedMessage key={each.loss.form.supplyId} unbooked={each} onBook={book} />
        ))}
      {booked
        .filter(({ supplyId }) => isHere(supplyId))
        .map((loss) => (
          <BookedMessage key={loss.movementId} loss={loss} onUndo={spoiling.undo} />
        ))}
    </>
  );
}

function UnbookedMessage({
  unbooked,
  onBook,
}: {
  readonly unbooked: UnbookedLoss;
  readonly onBook: Spoiling["book"];
}) {
  const { words } = unbooked.loss;
  switch (unbooked.kind) {
    case "unanswered":
      return (
        <Message kind="error" title={`${words} is not recorded as spoilt: nobody answered.`}>
          What you chose is still here: press again once the connection is back. It is booked once, even if
          the program heard it the first time.
        </Message>
      );
    case "refused":
      return (
        <Message kind="error" title={`${words} is not recorded as spoilt.`}>
          {unbooked.words}
        </Message>
      );
    case "held":
      return (
        <Message
          kind="error"
          title={`${words} is not recorded: ${unbooked.isSame ? "the same" : "another loss of it"} was booked elsewhere since this bench was read.`}
        >
          <p>If this is one more, book it too.</p>
          <Button onPress={() => void onBook(unbooked.loss)}>Book it too</Button>
        </Message>
      );
    default:
      return unbooked satisfies never;
  }
}

function BookedMessage({
  loss: { movementId, words, undone },
  onUndo,
}: {
  readonly loss: BookedLoss;
  readonly onUndo: Spoiling["undo"];
}) {
  if (undone === "yes") return <Message kind="done" title={`Undone: ${words} is back in stock.`} />;
  return (
    <Message kind="done" title={`Spoilt: ${words}, out of stock.`}>
      {undone === "failed" ? (
        <p role="alert">Not undone: nobody answered. Try again, or take it back in the supply's ledger.</p>
      ) : null}
      <Button
        aria-label={`Undo: ${words} spoilt`}
        isDisabled={undone === "undoing"}
        onPress={() => void onUndo(movementId)}
      >
        Undo
      </Button>
    </Message>
  );
}
