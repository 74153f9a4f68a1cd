import type { ReactNode } from "react";
import styles from "./sentence-choice.module.css";

/**
 * A question written as one sentence in the serif, whose underlined words are `SentenceChoice`s.
 *
 * @example <Sentence>Packing <SentenceChoice label="pieces" … /> on <SentenceChoice label="style" … />.</Sentence>
 */
export function Sentence({ children }: { readonly children: ReactNode }) {
  return <p className={styles.sentence}>{children}</p>;
}
