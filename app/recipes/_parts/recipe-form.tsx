"use client";

import { useActionState, useEffect, useRef, useState } from "react";
import { Button } from "../../_parts/button";
import { ChoiceField } from "../../_parts/choice-field";
import { Field } from "../../_parts/field";
import { attemptOf, BLANK, type FormState } from "../../_parts/form-state";
import { Message } from "../../_parts/message";
import type { Choice } from "../../_parts/sentence-choice";
import type { RecipeRows } from "../recipe-rows";
import styles from "./recipe-form.module.css";

type RecipeFormProps = {
  readonly action: (before: FormState, form: FormData) => Promise<FormState>;
  readonly rows: RecipeRows;
  readonly supplies: readonly Choice[];
  readonly cartons: readonly Choice[];
  readonly today: string;
};

const PER = [
  { value: "piece", words: "each piece" },
  { value: "parcel", words: "once a parcel" },
];

/** The card as rows: place, what is done, what it takes. Rows left empty are not part of it. */
export function RecipeForm({ action, rows, supplies, cartons, today }: RecipeFormProps) {
  const [state, send, isBusy] = useActionState(action, BLANK);
  const [extra, setExtra] = useState(0);
  const form = useRef<HTMLFormElement>(null);
  const attempt = attemptOf(state);
  const problems = state.kind === "refused" ? state.problems : {};
  const typedOr = (name: string, stored: string) =>
    state.kind === "refused" ? (state.typed[name] ?? "") : stored;
  const blank = { words: "", supplyId: supplies[0]?.value ?? "", amount: "", per: "piece" };
  const steps = [...rows.steps, ...Array.from({ length: extra }, () => blank)];

  useEffect(() => {
    if (attempt > 0) form.current?.querySelector<HTMLElement>("[aria-invalid=true]")?.focus();
  }, [attempt]);

  return (
    <form ref={form} action={send} className={styles.form} aria-label="Recipe" noValidate>
      {problems[""] === undefined ? null : <Message kind="error" title={problems[""]} />}
      <div key={attempt} className={styles.all}>
        <ol className={styles.steps}>
          {steps.map((step, row) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place in the form
            <li key={row} className={styles.step}>
              <Field
                label="Place"
                name={`place.${row}`}
                inputMode="numeric"
                size="short"
                defaultValue={typedOr(`place.${row}`, String(row + 1))}
                error={problems[`place.${row}`]}
              />
              <Field
                label="What is done"
                name={`words.${row}`}
                defaultValue={typedOr(`words.${row}`, step.words)}
                error={problems[`words.${row}`]}
              />
              <ChoiceField
                label="Takes"
                name={`supplyId.${row}`}
                choices={supplies}
                defaultValue={typedOr(`supplyId.${row}`, step.supplyId)}
                error={problems[`supplyId.${row}`]}
              />
              <Field
                label="How much"
                name={`amount.${row}`}
                size="short"
                defaultValue={typedOr(`amount.${row}`, step.amount)}
                error={problems[`amount.${row}`]}
              />
              <ChoiceField
                label="For"
                name={`per.${row}`}
                choices={PER}
                defaultValue={typedOr(`per.${row}`, step.per)}
              />
            </li>
          ))}
        </ol>
        <p className={styles.hint}>
          Amounts as you say them: 1 1/3, 1/2, 3 ft. A row without words and amount is left out.
        </p>
        <Button onPress={() => setExtra(extra + 1)}>One more step</Button>
        <h2 className={styles.title}>Which carton takes how many pieces?</h2>
        <ol className={styles.steps}>
          {rows.cartons.map((carton, row) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place in the form
            <li key={row} className={styles.carton}>
              <Field
                label="Up to pieces"
                name={`upTo.${row}`}
                inputMode="numeric"
                size="short"
                defaultValue={typedOr(`upTo.${row}`, carton.upTo)}
                error={problems[`upTo.${row}`]}
              />
              <ChoiceField
                label="Carton"
                name={`cartonId.${row}`}
                choices={cartons}
                defaultValue={typedOr(`cartonId.${row}`, carton.supplyId)}
                error={problems[`cartonId.${row}`]}
              />
            </li>
          ))}
        </ol>
        <Field
          label="Holds from"
          name="effectiveFrom"
          type="date"
          size="short"
          defaultValue={typedOr("effectiveFrom", today)}
          error={problems["effectiveFrom"]}
        />
        <Field label="Note" name="note" size="rows" defaultValue={typedOr("note", "")} />
      </div>
      <Button type="submit" tone="primary" isDisabled={isBusy}>
        Save as a new version
      </Button>
    </form>
  );
}
