"use client";

import { type ReactNode, useActionState, useEffect, useRef } from "react";
import { Button } from "./button";
import { classList } from "./class-list";
import type { FieldGroup, FormField } from "./form-field";
import { attemptOf, BLANK, type FormState } from "./form-state";
import { Message } from "./message";
import styles from "./record-form.module.css";
import { RecordFormField } from "./record-form-field";

type RecordFormProps = {
  readonly action: (before: FormState, form: FormData) => Promise<FormState>;
  readonly fields: readonly FormField[];
  /** Fields of several things, each under its name; they stand before the others. */
  readonly groups?: readonly FieldGroup[];
  /** Words on the button: "Save the supplier". */
  readonly submit: string;
  /** Name of the form for a screen reader. */
  readonly label: string;
  readonly tone?: "primary" | "secondary" | "plain";
  /** Fields side by side where there is room. */
  readonly layout?: "rows" | "line";
  readonly children?: ReactNode;
};

/**
 * A form that saves one thing. It is sent as a plain form before the page is interactive too; a refusal
 * keeps what was typed, stands beside the field that it is about and takes the focus there.
 *
 * @example <RecordForm action={saveZone} fields={[{ name: "name", label: "Zone", kind: "text" }]} submit="Add" … />
 */
export function RecordForm(props: RecordFormProps) {
  const { action, fields, groups = [], submit, label, tone = "secondary", layout = "rows", children } = props;
  const [state, send, isBusy] = useActionState(action, BLANK);
  const form = useRef<HTMLFormElement>(null);
  const attempt = attemptOf(state);

  useEffect(() => {
    if (attempt > 0) form.current?.querySelector<HTMLElement>("[aria-invalid=true]")?.focus();
  }, [attempt]);

  const problems = state.kind === "refused" ? state.problems : {};
  // A hidden field has no place of its own for its problem: it stands above the form.
  const all = [...groups.flatMap((group) => group.fields), ...fields];
  const named = new Set(all.filter((field) => field.kind !== "hidden").map((field) => field.name));
  const others = Object.entries(problems).filter(([name]) => !named.has(name));

  return (
    <form ref={form} action={send} className={styles.form} aria-label={label} noValidate>
      {others.map(([name, words]) => (
        <Message key={name} kind="error" title={words} />
      ))}
      {groups.map((group) => (
        <FormGroup key={`${attempt} ${group.title}`} group={group} state={state} />
      ))}
      <div key={attempt} className={classList(styles.fields, styles[layout])}>
        {fields.map((field) => (
          <StatedField key={field.name} field={field} state={state} />
        ))}
        {children}
      </div>
      <div className={styles.end}>
        <Button type="submit" tone={tone} isDisabled={isBusy}>
          {isBusy ? "Saving…" : submit}
        </Button>
        {state.kind === "done" ? (
          <p role="status" className={styles.done}>
            {state.words}
          </p>
        ) : null}
      </div>
    </form>
  );
}

type StatedFieldProps = { readonly field: FormField; readonly state: FormState };

/** A field with what was typed into it and what is wrong with it. */
function StatedField({ field, state }: StatedFieldProps) {
  const isRefused = state.kind === "refused";
  const problem = isRefused ? state.problems[field.name] : undefined;
  const value = isRefused ? (state.typed[field.name] ?? "") : (field.value ?? "");
  if (field.onlyWhenAsked === true && problem === undefined && value !== "yes") return null;
  return <RecordFormField field={field} value={value} problem={problem} />;
}

function FormGroup({ group, state }: { readonly group: FieldGroup; readonly state: FormState }) {
  const content = (
    <div className={classList(styles.fields, styles.line)}>
      {group.fields.map((field) => (
        <StatedField key={field.name} field={field} state={state} />
      ))}
    </div>
  );
  const note = group.note === undefined ? null : <p className={styles.groupNote}>{group.note}</p>;
  if (group.isFolded === true) {
    const isTouched =
      state.kind === "refused" && group.fields.some((field) => state.typed[field.name] !== undefined);
    return (
      <details className={styles.group} open={isTouched}>
        <summary className={styles.fold}>{group.title}</summary>
        {note}
        {content}
      </details>
    );
  }
  return (
    <fieldset className={styles.group}>
      <legend className={styles.groupTitle}>{group.title}</legend>
      {note}
      {content}
    </fieldset>
  );
}
