"use client";

import { useActionState, useEffect, useRef, useState } from "react";
import { Button } from "../../_parts/button";
import { ChoiceField } from "../../_parts/choice-field";
import { Field } from "../../_parts/field";
import { attemptOf, BLANK, type FormState } from "../../_parts/form-state";
import { Message } from "../../_parts/message";
import type { Choice } from "../../_parts/sentence-choice";
import { liveSum, type SumGround } from "../live-sum";
import { problemRows, rowsWords } from "../problem-rows";
import type { RecipeRows } from "../recipe-rows";
import { CardComesTo } from "./card-comes-to";
import styles from "./recipe-form.module.css";
import { StepRow } from "./step-row";
import { useTypedAfterPause } from "./use-typed-after-pause";

type RecipeFormProps = {
  readonly action: (before: FormState, form: FormData) => Promise<FormState>;
  readonly rows: RecipeRows;
  readonly supplies: readonly Choice[];
  readonly cartons: readonly Choice[];
  /** What the live sum is reckoned with. */
  readonly ground: SumGround;
  readonly money: { readonly currency: string; readonly minorDigits: number };
};

/** The card as rows: place, what is done, what it takes; beside it what it comes to. Empty rows are not part of it. */
export function RecipeForm({ action, rows, supplies, cartons, ground, money }: RecipeFormProps) {
  const [state, send, isBusy] = useActionState(action, BLANK);
  const [extra, setExtra] = useState(0);
  const form = useRef<HTMLFormElement>(null);
  const attempt = attemptOf(state);
  const refusals = state.kind === "refused" ? state.problems : {};
  const shown = state.kind === "refused" ? state.typed : { effectiveFrom: ground.today, ...rows.typed };
  const { typed, note } = useTypedAfterPause(form, shown, attempt);
  const live = liveSum(typed, ground);
  const textOf = (name: string) => shown[name] ?? "";
  // What the sum reads is said anew at each pause; the rest stays until the form is sent again.
  const problemOf = (name: string) =>
    live.problems[name] ?? (LIVE_FIELD.test(name) && typed[name] !== undefined ? undefined : refusals[name]);
  const retired = problemRows(
    Object.fromEntries(Object.entries(live.problems).filter(([name]) => TAKES_FIELD.test(name))),
  );
  const spareSupply = supplies[0]?.value ?? "";

  useEffect(() => {
    if (attempt > 0) form.current?.querySelector<HTMLElement>("[aria-invalid=true]")?.focus();
  }, [attempt]);

  return (
    <form ref={form} action={send} onInput={note} className={styles.form} aria-label="Recipe" noValidate>
      {refusals[""] === undefined ? null : <Message kind="error" title={refusals[""]} />}
      {refusals[""] === undefined && retired.length > 0 ? (
        <Message kind="note" title={`What ${rowsWords(retired)} takes is no longer used.`}>
          Choose another supply there, or take it back into use under Supplies. Nothing else has changed.
        </Message>
      ) : null}
      <div key={attempt} className={styles.all}>
        <ol className={styles.steps}>
          {Array.from({ length: rows.steps + extra }, (_, row) => (
            <StepRow
              // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place in the form
              key={row}
              row={row}
              supplies={withStored(supplies, textOf(`supplyId.${row}`))}
              textOf={(field) => textOf(`${field}.${row}`) || (field === "supplyId" ? spareSupply : "")}
              problemOf={(field) => problemOf(`${field}.${row}`)}
            />
          ))}
        </ol>
        <p className={styles.hint}>
          Amounts as you say them: 1 1/3, 1/2, 3 ft. A row without words and amount is left out.
        </p>
        <Button onPress={() => setExtra(extra + 1)}>One more step</Button>
        <h2 className={styles.title}>Which carton takes how many pieces?</h2>
        <ol className={styles.steps}>
          {Array.from({ length: rows.cartons }, (_, row) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place in the form
            <li key={row} className={styles.carton}>
              <Field
                label="Up to pieces"
                name={`upTo.${row}`}
                inputMode="numeric"
                size="short"
                defaultValue={textOf(`upTo.${row}`)}
                error={problemOf(`upTo.${row}`)}
              />
              <ChoiceField
                label="Carton"
                name={`cartonId.${row}`}
                choices={withStored(cartons, textOf(`cartonId.${row}`))}
                defaultValue={textOf(`cartonId.${row}`)}
                error={problemOf(`cartonId.${row}`)}
              />
            </li>
          ))}
        </ol>
        <Field
          label="The bare piece weighs"
          name="mass"
          size="short"
          hint="370 g, 1 lb 10 oz; kept with the item type"
          defaultValue={textOf("mass")}
          error={problemOf("mass")}
        />
        <Field
          label="Holds from"
          name="effectiveFrom"
          type="date"
          size="short"
          defaultValue={textOf("effectiveFrom")}
          error={problemOf("effectiveFrom")}
        />
        <Field label="Note" name="note" size="rows" defaultValue={textOf("note")} error={problemOf("note")} />
      </div>
      <CardComesTo live={live} ground={ground} money={money} />
      <Button type="submit" tone="primary" isDisabled={isBusy}>
        Save as a new version
      </Button>
    </form>
  );

  /** The list with what stands in the row, where that is no longer to be chosen: nothing is replaced unseen. */
  function withStored(choices: readonly Choice[], id: string): readonly Choice[] {
    const stored = ground.supplies.get(id);
    if (stored === undefined || choices.some(({ value }) => value === id)) return choices;
    return [{ value: id, words: `${stored.name} (no longer used)` }, ...choices];
  }
}

/** Fields that the live sum reads. */
const LIVE_FIELD = /^(?:mass$|(?:amount|supplyId|per|upTo|cartonId)\.)/;
const TAKES_FIELD = /^(?:supplyId|cartonId)\./;
