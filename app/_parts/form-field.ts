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
  /** Shown only once the form was refused with a problem at this field: a tick that lets something unusual pass. */
  readonly onlyWhenAsked?: boolean | undefined;
};

/** Fields that belong to one thing, such as a line of an order, under its name. */
export type FieldGroup = {
  readonly title: string;
  /** What is known of it. */
  readonly note?: string | undefined;
  readonly fields: readonly FormField[];
  /** Closed until it is asked for. */
  readonly isFolded?: boolean | undefined;
};
