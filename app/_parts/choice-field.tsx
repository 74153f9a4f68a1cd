import { type ChangeEvent, useId } from "react";
import { classList } from "./class-list";
import styles from "./field.module.css";
import { givenProps } from "./given-props";
import type { Choice } from "./sentence-choice";

type ChoiceFieldProps = {
  readonly label: string;
  readonly name?: string | undefined;
  readonly choices: readonly Choice[];
  readonly defaultValue?: string | undefined;
  /** With `onChange`: the component that uses it holds the value. */
  readonly value?: string | undefined;
  readonly onChange?: ((value: string) => void) | undefined;
  readonly hint?: string | undefined;
  readonly error?: string | undefined;
  readonly isRequired?: boolean | undefined;
  readonly size?: "short" | "line" | undefined;
};

/**
 * A labelled list to choose one of; the browser's own list, so it works everywhere. In a form it sends `name`; elsewhere
 * a component holds its value.
 *
 * @example <ChoiceField label="Use unit" name="unit" choices={[{ value: "sheet", words: "sheets" }]} />
 */
export function ChoiceField(props: ChoiceFieldProps) {
  const { label, name, choices, defaultValue, value, onChange, hint, error } = props;
  const { isRequired = false, size = "line" } = props;
  const id = useId();
  const described = [hint === undefined ? "" : `${id}-hint`, error === undefined ? "" : `${id}-error`];
  return (
    <div className={classList(styles.field, styles[size])}>
      <label htmlFor={id} className={styles.label}>
        {label}
      </label>
      <select
        id={id}
        {...givenProps({ name, defaultValue, value })}
        {...(onChange && {
          onChange: (event: ChangeEvent<HTMLSelectElement>) => onChange(event.target.value),
        })}
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
