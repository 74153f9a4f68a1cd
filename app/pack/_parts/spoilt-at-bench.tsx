"use client";

import { useState } from "react";
import { Radio, RadioGroup } from "react-aria-components";
import { Button } from "../../_parts/button";
import { classList } from "../../_parts/class-list";
import type { PackingChoices } from "../packing-choices";
import type { PackingDraft } from "../packing-draft";
import { spoiltLines } from "../spoilt-lines";
import { useSpoiling } from "../use-spoiling";
import styles from "./spoilt.module.css";
import { SpoiltMessages } from "./spoilt-messages";
import { SpoiltRow } from "./spoilt-row";

/** Why, in the trade's words; the first says nothing. */
const REASONS = [
  { value: "", words: "no reason" },
  { value: "torn", words: "torn" },
  { value: "wet", words: "wet" },
  { value: "taped twice", words: "taped twice" },
  { value: "other", words: "other" },
] as const;

type SpoiltAtBenchProps = {
  readonly draft: PackingDraft;
  readonly choices: PackingChoices;
  /** Called once stock has moved. */
  readonly onMoved: () => void;
};

/** Torn tissue, a wet carton, tape used twice: booked out of stock at once, whatever becomes of the parcel. */
export function SpoiltAtBench({ draft, choices, onMoved }: SpoiltAtBenchProps) {
  const [isOpen, setOpen] = useState(false);
  const [reason, setReason] = useState("");
  const [others, setOthers] = useState<readonly string[]>([]);
  const spoiling = useSpoiling(choices.newestLine, onMoved);
  const lines = spoiltLines(draft, others, choices);
  const shown = new Set(lines.map(({ supply }) => supply.id));
  return (
    <div className={styles.spoilt}>
      <Button tone="plain" aria-expanded={isOpen} onPress={() => setOpen(!isOpen)}>
        {isOpen ? "Close what was spoilt" : "Something spoilt?"}
      </Button>
      {isOpen ? (
        <fieldset className={styles.list}>
          <legend>Spoilt just now</legend>
          <RadioGroup
            className={classList(styles.reasons)}
            aria-label="Why was it spoilt?"
            orientation="horizontal"
            value={reason}
            onChange={setReason}
          >
            {REASONS.map(({ value, words }) => (
              <Radio key={value} value={value} className={classList(styles.reason)}>
                {words}
              </Radio>
            ))}
          </RadioGroup>
          <ul className={styles.rows}>
            {lines.map((spoilt) => (
              <SpoiltRow
                key={`${spoilt.supply.id} ${spoilt.line.shownUnit}`}
                spoilt={spoilt}
                measures={choices.measures}
                spoiling={spoiling}
                reason={reason}
              />
            ))}
          </ul>
          <select
            className={styles.other}
            aria-label="Another supply was spoilt"
            value=""
            onChange={(event) => setOthers([...others, event.target.value])}
          >
            <option value="" disabled>
              + another supply
            </option>
            {choices.supplies
              .filter(({ id }) => !shown.has(id))
              .map(({ id, name }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
          </select>
        </fieldset>
      ) : null}
      <SpoiltMessages spoiling={spoiling} isHere={(supplyId) => !isOpen || !shown.has(supplyId)} />
    </div>
  );
}
