"use client";

import { useState } from "react";
import { parseAmount } from "#lib/units/amount-text";
import type { Measures } from "#lib/units/measures";
import { Button } from "../../_parts/button";
import { Stepper } from "../../_parts/stepper";
import { lineText, steppedAmount } from "../card-line";
import { type SpoiltLine, spoiltFormOf, spoiltWords } from "../spoilt-lines";
import type { Spoiling } from "../use-spoiling";
import styles from "./spoilt.module.css";
import { SpoiltMessages } from "./spoilt-messages";

type SpoiltRowProps = {
  readonly spoilt: SpoiltLine;
  readonly measures: Measures;
  /** Why; empty where nobody said. */
  readonly reason: string;
  readonly spoiling: Spoiling;
};

/**
 * One supply: how much of it was spoilt, the button that books it, and what became of that. It begins with one unit, and
 * does so anew once that is booked.
 */
export function SpoiltRow({ spoilt, measures, reason, spoiling }: SpoiltRowProps) {
  const { supply } = spoilt;
  const [taken, setTaken] = useState(spoilt.line.amount);
  const [unread, setUnread] = useState<string | null>(null);
  const line = { ...spoilt.line, amount: taken };
  const chosen = { supply, line };
  const setAmount = (amount: typeof taken): void => {
    setUnread(null);
    setTaken(amount);
  };
  const readTyped = (typed: string): void => {
    const read = parseAmount(typed, supply.unit, measures);
    if (read.kind === "unreadable" || read.amount <= 0) setUnread(typed);
    else setAmount(read.amount);
  };
  const book = async (): Promise<void> => {
    const loss = { form: spoiltFormOf(chosen, reason), words: spoiltWords(chosen) };
    if (await spoiling.book(loss)) setAmount(spoilt.line.amount);
  };
  const parts = supply.unit === "each" || supply.unit === "strip" ? 1 : 2;
  return (
    <li className={styles.row}>
      <span>{supply.name}</span>
      <Stepper
        label={`spoilt ${supply.name}`}
        text={lineText(line, supply.unit)}
        isLessDisabled={steppedAmount(line, parts, -1) === 0}
        onLess={() => setAmount(steppedAmount(line, parts, -1))}
        onMore={() => setAmount(steppedAmount(line, parts, 1))}
        onText={readTyped}
      />
      <Button
        aria-label={`Spoilt: ${spoiltWords(chosen)}`}
        isDisabled={spoiling.isSending || unread !== null}
        onPress={() => void book()}
      >
        Spoilt
      </Button>
      {unread === null ? null : (
        <p role="alert" className={styles.problem}>
          {supply.name}: “{unread}” can't be read. Type an amount above zero, like 1/2, 2 or 3 ft.
        </p>
      )}
      <div className={styles.said}>
        <SpoiltMessages spoiling={spoiling} isHere={(supplyId) => supplyId === supply.id} />
      </div>
    </li>
  );
}
