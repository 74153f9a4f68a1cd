"use client";

import { type ReactNode, useState } from "react";
import { Radio, RadioGroup } from "react-aria-components";
import { classList } from "../../_parts/class-list";
import type { DraftChange } from "../draft-change";
import type { PackingChoices } from "../packing-choices";
import type { PackingDraft } from "../packing-draft";
import { CardLineRow } from "./card-line-row";
import styles from "./pack.module.css";

/** How many presses make one: whole, halves, thirds, quarters. */
const STEPS = [
  { parts: 1, sign: "1", words: "one" },
  { parts: 2, sign: "½", words: "a half" },
  { parts: 3, sign: "⅓", words: "a third" },
  { parts: 4, sign: "¼", words: "a quarter" },
] as const;

type PackingCardProps = {
  readonly draft: PackingDraft;
  readonly choices: PackingChoices;
  readonly onChange: (change: DraftChange) => void;
  /** What stands under the card. */
  readonly children?: ReactNode;
};

/** The numbered card in the order of the work, with what each step takes. */
export function PackingCard({ draft, choices, onChange, children }: PackingCardProps) {
  const [parts, setParts] = useState<number>(1);
  const materials = choices.supplies.filter((supply) => supply.kind !== "carton");
  return (
    <section aria-label="Packing card">
      <RadioGroup
        className={classList(styles.steps)}
        aria-label="One press of plus or minus is"
        orientation="horizontal"
        value={String(parts)}
        onChange={(value) => setParts(Number(value))}
      >
        <span className={styles.stepsLabel}>One press is</span>
        {STEPS.map((step) => (
          <Radio
            key={step.parts}
            value={String(step.parts)}
            aria-label={step.words}
            className={classList(styles.step)}
          >
            {step.sign}
          </Radio>
        ))}
      </RadioGroup>
      {draft.lines.length === 0 ? (
        <p className={styles.quiet}>
          No recipe says yet what goes in here. Add the supplies that you reach for; the parcel is recorded
          all the same.
        </p>
      ) : null}
      <ol className={styles.card}>
        {draft.lines.map((line, index) => (
          <CardLineRow
            key={`${draft.id}-${line.key}`}
            line={line}
            number={index + 1}
            parts={parts}
            choices={choices}
            onChange={onChange}
          />
        ))}
      </ol>
      <select
        className={styles.quietSelect}
        aria-label="Add a supply to the card"
        value=""
        onChange={(event) =>
          onChange({
            kind: "add-line",
            supplyId: event.target.value,
            key: addedKey(draft, event.target.value),
          })
        }
      >
        <option value="" disabled>
          + another supply
        </option>
        {materials.map((supply) => (
          <option key={supply.id} value={supply.id}>
            {supply.name}
          </option>
        ))}
      </select>
      {children}
    </section>
  );
}

/** A key that no line of the card has: one supply may be added twice. */
function addedKey(draft: PackingDraft, supplyId: string): string {
  const taken = new Set(draft.lines.map((line) => line.key));
  let number = 1;
  while (taken.has(`added-${supplyId}-${number}`)) number += 1;
  return `added-${supplyId}-${number}`;
}
