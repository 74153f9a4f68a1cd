"use client";

import { useActionState, useEffect, useRef } from "react";
import { Button } from "../../../_parts/button";
import { ChoiceField } from "../../../_parts/choice-field";
import { Field } from "../../../_parts/field";
import { attemptOf, BLANK } from "../../../_parts/form-state";
import { Message } from "../../../_parts/message";
import { saveCount } from "../actions";
import type { CountLineView } from "../count-line-view";
import styles from "./count-line.module.css";

/** One supply on the counting walk. Each line is saved on its own, so leaving half way loses nothing. */
export function CountLine({ line, countKey }: { readonly line: CountLineView; readonly countKey: string }) {
  const [state, send, isBusy] = useActionState(saveCount, BLANK);
  const typed = state.kind === "refused" ? state.typed : {};
  const problems = state.kind === "refused" ? state.problems : {};
  const { typed: typedProblem, ...others } = problems;
  const fields = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (state.kind === "refused")
      fields.current?.querySelector<HTMLInputElement>("input[name=typed]")?.focus();
  }, [state]);
  return (
    <li className={styles.line} id={line.supplyId}>
      <div className={styles.name}>
        <h2 className={styles.supply}>{line.name}</h2>
        <p className={line.isNeverCounted ? styles.never : styles.book}>{line.book}</p>
      </div>
      <form action={send} className={styles.form} aria-label={`Count ${line.name}`} noValidate>
        <input type="hidden" name="id" value={countKey} />
        <input type="hidden" name="supplyId" value={line.supplyId} />
        <div key={attemptOf(state)} ref={fields} className={styles.fields}>
          {line.methods.length > 1 ? (
            <ChoiceField
              label="Counted by"
              name="method"
              choices={line.methods}
              defaultValue={typed["method"] === "looks-right" ? "number" : (typed["method"] ?? "number")}
            />
          ) : (
            <input type="hidden" name="method" value="number" />
          )}
          <Field
            label="On the shelf"
            name="typed"
            hint={line.hint}
            inputMode={line.methods.length > 1 ? "text" : "decimal"}
            defaultValue={typed["typed"]}
            error={typedProblem}
          />
        </div>
        <div className={styles.buttons}>
          <Button type="submit" tone="primary" isPending={isBusy}>
            Save
          </Button>
          {line.isNeverCounted ? null : (
            <Button type="submit" name="looksRight" value="yes" isPending={isBusy}>
              Looks right
            </Button>
          )}
        </div>
      </form>
      {Object.entries(others).map(([name, words]) => (
        <Message key={name} kind="error" title={words} />
      ))}
      {state.kind === "done" ? <Message kind="done" title={state.words} /> : null}
    </li>
  );
}
