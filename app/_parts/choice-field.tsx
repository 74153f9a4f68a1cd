import { useId } from "react";
import { classList } from "./class-list";
import styles from "./field.module.css";
import type { Choice } from "./sentence-choice";

type ChoiceFieldProps = {
  readonly label: string;
  readonly name: string;
  readonly choices: readonly Choice[];
  readonly defaultValue?: string | undefined;
  readonly hint?: string | undefined;
  readonly error?: string | undefined;
  readonly isRequired?: boolean | undefined;
  readonly size?: "short" | "line" | undefined;
};

/**
 * A labelled list to choose one of, for forms; the browser's own list, so it works everywhere.
 *
 * @example <ChoiceField label="Use unit" name="unit" choices={[{ value: "sheet", words: "sheets" }]} />
 */
export function ChoiceField(props: ChoiceFieldProps) {
  const { label, name, choices, defaultValue, hint, error, isRequired = false, size = "line" } = props;
  const id = useId();
  const described = [hint === undefined ? "" : `${id}-hint`, error === undefined ? "" : `${id}-error`];
  return (
    <div className={classList(styles.field, styles[size])}>
      <label htmlFor={id} className={styles.label}>
        {label}
      </label>
      <select
        id={id}
        name={name}
        defaultValue={defaultValue}
        required={isRequired}
        aria-invalid={error !== undefined}
        aria-describedby={classList(...described) || undefined}
        className={styles.input}
      >
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.words}
          </option>
        ))}
      </select>
      {hint === undefined ? null : (
        <span id={`${id}-hint`} className={styles.hint}>
          {hint}
        </span>
      )}
      {error === undefined ? null : (
        <span id={`${id}-error`} className={styles.error}>
          {error}
        </span>
      )}
    </div>
  );
}
