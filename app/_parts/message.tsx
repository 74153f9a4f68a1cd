import type { ReactNode } from "react";
import { classList } from "./class-list";
import styles from "./message.module.css";

type MessageProps = {
  /** `error` is read out at once, `done` when the reader is free, `note` stays as text. */
  readonly kind: "error" | "done" | "note";
  /** What happened, in one line; an error names the field. */
  readonly title: ReactNode;
  /** The way out: what to do now. */
  readonly children?: ReactNode;
};

const ROLES = { error: "alert", done: "status", note: undefined } as const;
const WORDS = { error: "Not done", done: "Done", note: "Note" } as const;

/**
 * A message in the flow of the screen. It says its kind in words as well as by its edge.
 *
 * @example <Message kind="error" title="Amount: “1..5” can't be read.">Write it like 1.5 or 1 1/2.</Message>
 */
export function Message({ kind, title, children }: MessageProps) {
  return (
    <div role={ROLES[kind]} className={classList(styles.message, styles[kind])}>
      <p className={styles.title}>
        <span className={styles.kind}>{WORDS[kind]}.</span> {title}
      </p>
      {children === undefined ? null : <div className={styles.wayOut}>{children}</div>}
    </div>
  );
}
