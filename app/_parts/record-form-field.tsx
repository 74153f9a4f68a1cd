import { type ReactNode, useId } from "react";
import { ChoiceField } from "./choice-field";
import { Field } from "./field";
import type { FormField } from "./form-field";
import styles from "./record-form.module.css";

type RecordFormFieldProps = {
  readonly field: FormField;
  /** What stands in it: the stored value, or what was typed when the form was refused. */
  readonly value: string;
  readonly problem: string | undefined;
};

/** One field of a record form, with its hint and, where it was refused, what to mend. */
export function RecordFormField({ field, value, problem }: RecordFormFieldProps) {
  if (field.kind === "hidden") return <input type="hidden" name={field.name} value={field.value ?? ""} />;
  return (
    <div className={styles.field} data-for={field.onlyFor?.join(" ")}>
      <Control field={field} value={value} problem={problem} />
    </div>
  );
}

function Control({ field, value, problem }: RecordFormFieldProps) {
  const asked = {
    label: field.label,
    name: field.name,
    hint: field.hint,
    error: problem,
    isRequired: field.required,
  };
  switch (field.kind) {
    case "choice":
      return <ChoiceField {...asked} isRequired={false} choices={field.choices ?? []} defaultValue={value} />;
    case "day":
      return <Field {...asked} type="date" size="short" defaultValue={value} />;
    case "number":
      return <Field {...asked} inputMode="decimal" size="short" defaultValue={value} />;
    case "text":
      return <Field {...asked} defaultValue={value} />;
    case "lines":
      return <Field {...asked} size="rows" defaultValue={value} />;
    case "tick":
      return <Tick field={field} value={value} problem={problem} />;
    case "ticks":
      return <Ticks field={field} value={value} problem={problem} />;
    case "hidden":
      return null;
    default:
      return field.kind satisfies never;
  }
}

function Tick({ field, value, problem }: RecordFormFieldProps) {
  return (
    <Box name={field.name} value="yes" isTicked={value === "yes"} isWrong={problem !== undefined}>
      {field.label}
      {field.hint === undefined ? null : <span className={styles.tickHint}>{field.hint}</span>}
      {problem === undefined ? null : <span className={styles.problem}>{problem}</span>}
    </Box>
  );
}

/** Several ticks under one name, as a group with its own question. */
function Ticks({ field, value, problem }: RecordFormFieldProps) {
  const id = useId();
  const ticked = new Set(value.split("\n"));
  return (
    <fieldset className={styles.ticks} aria-describedby={`${id}-about`}>
      <legend className={styles.question}>{field.label}</legend>
      <div id={`${id}-about`}>
        {field.hint === undefined ? null : <span className={styles.tickHint}>{field.hint}</span>}
        {problem === undefined ? null : <span className={styles.problem}>{problem}</span>}
      </div>
      {(field.choices ?? []).map((choice) => (
        <Box
          key={choice.value}
          name={field.name}
          value={choice.value}
          isTicked={ticked.has(choice.value)}
          isWrong={problem !== undefined}
        >
          {choice.words}
        </Box>
      ))}
    </fieldset>
  );
}

type BoxProps = {
  readonly name: string;
  readonly value: string;
  readonly isTicked: boolean;
  readonly isWrong: boolean;
  readonly children: ReactNode;
};

function Box({ name, value, isTicked, isWrong, children }: BoxProps) {
  return (
    <label className={styles.tick}>
      <input type="checkbox" name={name} value={value} defaultChecked={isTicked} aria-invalid={isWrong} />
      <span>{children}</span>
    </label>
  );
}
