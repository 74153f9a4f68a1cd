import type { Choice } from "./sentence-choice";

/** One field of a form as data: the page says what is asked, `RecordForm` says how. */
export type FormField = {
  readonly name: string;
  readonly label: string;
  readonly kind: "text" | "number" | "day" | "choice" | "tick" | "ticks" | "lines" | "hidden";
  /** Of `ticks` the values that are ticked, one a line. */
  readonly value?: string | undefined;
  readonly hint?: string | undefined;
  readonly choices?: readonly Choice[] | undefined;
  readonly required?: boolean | undefined;
  /** Shown only while a choice of the form has one of these values; see record-form.module.css. */
  readonly onlyFor?: readonly string[] | undefined;
};
