"use client";

import type { ReactNode } from "react";
import { Button } from "../../_parts/button";
import { Message } from "../../_parts/message";
import type { PackingChoices } from "../packing-choices";
import styles from "./pack.module.css";

type CountOrderMessageProps = {
  /** Supplies counted on the day packed. */
  readonly supplyIds: readonly string[];
  readonly choices: PackingChoices;
  readonly onAnswer: (answer: "before" | "after") => void;
  /** What the parcel holds, where it is not the one on the bench. */
  readonly words?: string;
  /** Other ways out. */
  readonly children?: ReactNode;
};

/** Asks whether a parcel was packed before or after the count of its day. */
export function CountOrderMessage({ supplyIds, choices, onAnswer, words, children }: CountOrderMessageProps) {
  const names = supplyIds.map((id) => choices.supplies.find((supply) => supply.id === id)?.name ?? id);
  return (
    <Message kind="error" title={`Was ${words ?? "it"} packed before or after the count of that day?`}>
      <p>
        {names.join(", ")} was counted on the day packed. The count may have seen this parcel already, or not.
      </p>
      <div className={styles.answers}>
        <Button onPress={() => onAnswer("before")}>Before the count</Button>
        <Button onPress={() => onAnswer("after")}>After the count</Button>
        {children}
      </div>
    </Message>
  );
}
