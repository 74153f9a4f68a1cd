"use client";

import { type ChangeEvent, useState } from "react";
import { MOST_CARD_BYTES } from "../most-card-bytes";
import styles from "./postage.module.css";

/** Chooses a file of cards; one that is far too large is refused before it is sent. */
export function CardFileField() {
  const [problem, setProblem] = useState<string | null>(null);

  function look(event: ChangeEvent<HTMLInputElement>) {
    const [file] = event.target.files ?? [];
    const isTooLarge = file !== undefined && file.size > MOST_CARD_BYTES;
    if (isTooLarge) event.target.value = "";
    setProblem(isTooLarge ? `${file.name} is far larger than cards are. Choose the file of cards.` : null);
  }

  return (
    <>
      <label className={styles.file}>
        CSV file of cards
        <input type="file" name="file" accept=".csv,.txt,text/csv" onChange={look} />
      </label>
      {problem === null ? null : (
        <p role="alert" className={styles.act}>
          {problem}
        </p>
      )}
    </>
  );
}
