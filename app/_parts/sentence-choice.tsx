"use client";

import { givenProps } from "./given-props";
import styles from "./sentence-choice.module.css";

/** One entry of a list: the value that is sent and the words that are read. */
export type Choice = { readonly value: string; readonly words: string };

type SentenceChoiceProps = {
  /** What is chosen, for those who can't see the sentence: "cushion style". */
  readonly label: string;
  readonly name?: string | undefined;
  readonly choices: readonly Choice[];
  readonly value?: string | undefined;
  readonly defaultValue?: string | undefined;
  readonly onChange?: ((value: string) => void) | undefined;
};

/**
 * An underlined word of a sentence that opens a list. It is the browser's own list, so that it sends
 * its form before the page is interactive. Put it inside an element with the class of `Sentence`.
 *
 * @example <SentenceChoice label="cushion style" name="style" choices={styles} value={style} onChange={setStyle} />
 */
export function SentenceChoice({ label, name, choices, value, defaultValue, onChange }: SentenceChoiceProps) {
  return (
    <span className={styles.choice}>
      <select
        aria-label={label}
        className={styles.select}
        {...givenProps({ name, value, defaultValue })}
        onChange={(event) => onChange?.(event.target.value)}
      >
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.words}
          </option>
        ))}
      </select>
      <svg className={styles.chevron} viewBox="0 0 12 8" width="12" height="8" aria-hidden="true">
        <path d="M1 1l5 5 5-5" fill="none" stroke="currentColor" strokeWidth="1.6" />
      </svg>
    </span>
  );
}
