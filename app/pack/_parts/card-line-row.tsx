"use client";

import { useState } from "react";
import { formatAmount, parseAmount } from "#lib/units/amount-text";
import { Button } from "../../_parts/button";
import { Stepper } from "../../_parts/stepper";
import { lineText, steppedAmount } from "../card-line";
import type { DraftChange } from "../draft-change";
import type { PackingChoices, SupplyChoice } from "../packing-choices";
import type { CardLine } from "../packing-draft";
import { substitutesFor } from "../substitutes-for";
import styles from "./pack.module.css";

type CardLineRowProps = {
  readonly line: CardLine;
  readonly number: number;
  /** One press of the stepper is 1/parts of the shown unit. */
  readonly parts: number;
  readonly choices: PackingChoices;
  readonly onChange: (change: DraftChange) => void;
};

/** One step of the card: what to do, what it takes, more or less of it, something else instead. */
export function CardLineRow({ line, number, parts, choices, onChange }: CardLineRowProps) {
  const [open, setOpen] = useState(false);
  const [unread, setUnread] = useState<string | null>(null);
  const supply = choices.supplies.find((candidate) => candidate.id === line.supplyId);
  if (supply === undefined) return null;
  const setAmount = (value: CardLine["amount"]): void => {
    setUnread(null);
    onChange({ kind: "line-amount", key: line.key, amount: value });
  };
  const readTyped = (typed: string): void => {
    const read = parseAmount(typed, supply.unit, choices.measures);
    if (read.kind === "unreadable" || read.amount < 0) setUnread(typed);
    else setAmount(read.amount);
  };
  return (
    <li className={styles.line}>
      <span className={styles.number} aria-hidden="true">
        {number}
      </span>
      <div className={styles.what}>
        <span>{line.words === null || line.words === "" ? supply.name : line.words}</span>
        {line.words === null || line.words === "" ? null : (
          <span className={styles.supply}>{supply.name}</span>
        )}
        <Shortage line={line} supply={supply} />
        {unread === null ? null : (
          <p role="alert" className={styles.problem}>
            “{unread}” can't be read. Type it like 1 1/3, 0.5 or 3 ft.
          </p>
        )}
      </div>
      <Stepper
        label={`${supply.name}, step ${number}`}
        text={lineText(line, supply.unit)}
        isLessDisabled={line.amount === 0}
        onLess={() => setAmount(steppedAmount(line, parts, -1))}
        onMore={() => setAmount(steppedAmount(line, parts, 1))}
        onText={readTyped}
      />
      <Button
        tone="plain"
        aria-expanded={open}
        aria-label={`Change ${supply.name}, step ${number}`}
        onPress={() => setOpen(!open)}
      >
        {open ? "Close" : "Change"}
      </Button>
      {open ? (
        <LineChoices line={line} choices={choices} onChange={onChange} onDone={() => setOpen(false)} />
      ) : null}
    </li>
  );
}

function Shortage({ line, supply }: { readonly line: CardLine; readonly supply: SupplyChoice }) {
  if (supply.onHand === null || line.amount <= supply.onHand) return null;
  const left = supply.onHand < 0 ? "less than none" : formatAmount(supply.onHand, supply.unit);
  return <span className={styles.shortage}>The book says {left} left: count this.</span>;
}

type LineChoicesProps = {
  readonly line: CardLine;
  readonly choices: PackingChoices;
  readonly onChange: (change: DraftChange) => void;
  readonly onDone: () => void;
};

function LineChoices({ line, choices, onChange, onDone }: LineChoicesProps) {
  const substitutes = substitutesFor(line, choices);
  return (
    <div className={styles.instead}>
      {substitutes.length === 0 ? null : <span className={styles.quiet}>Used instead:</span>}
      {substitutes.map((other) => (
        <span key={other.supplyId} className={styles.standIn}>
          <Button
            data-substitute={other.supplyId}
            onPress={() => {
              onChange({ kind: "substitute", key: line.key, supplyId: other.supplyId, amount: other.amount });
              onDone();
            }}
          >
            {other.name}: {formatAmount(other.amount, other.unit)}
          </Button>
          {other.words === "" ? null : <span className={styles.quiet}>{other.words}</span>}
        </span>
      ))}
      <Button tone="plain" onPress={() => onChange({ kind: "remove-line", key: line.key })}>
        Leave this step out
      </Button>
    </div>
  );
}
