"use client";

import type { HTMLInputTypeAttribute } from "react";
import { FieldError, Input, Label, Text, TextArea, TextField } from "react-aria-components";
import { classList } from "./class-list";
import styles from "./field.module.css";
import { givenProps } from "./given-props";

type FieldProps = {
  readonly label: string;
  readonly name?: string | undefined;
  readonly value?: string | undefined;
  readonly defaultValue?: string | undefined;
  readonly onChange?: ((value: string) => void) | undefined;
  /** What may be typed, with an example: "3 ft, 90 in or 1 m". */
  readonly hint?: string | undefined;
  /** What is wrong and the way out; its presence marks the field as wrong. */
  readonly error?: string | undefined;
  readonly type?: HTMLInputTypeAttribute | undefined;
  /** The keys a phone shows: "decimal" for amounts, "numeric" for whole numbers. */
  readonly inputMode?: "text" | "decimal" | "numeric" | "search" | undefined;
  readonly placeholder?: string | undefined;
  readonly autoComplete?: string | undefined;
  readonly isRequired?: boolean | undefined;
  readonly isDisabled?: boolean | undefined;
  /** `short` for a number or a date, `rows` for a note of several lines. */
  readonly size?: "short" | "line" | "rows" | undefined;
  /** The words to suggest while typing. */
  readonly suggestions?: readonly string[] | undefined;
};

/**
 * One labelled text field with its hint and its error, for words, amounts, sizes, weights, money and
 * dates (`type="date"`). It sends `name` with its form before the page is interactive too.
 *
 * @example <Field label="On the shelf" name="amount" inputMode="decimal" hint="174 or 1 1/3" size="short" />
 */
export function Field({ label, hint, error, size = "line", placeholder, suggestions, ...field }: FieldProps) {
  const { name, value, defaultValue, onChange, type = "text", inputMode, autoComplete = "off" } = field;
  const { isRequired = false, isDisabled = false } = field;
  const list = suggestions && `suggestions-${name ?? label}`.replaceAll(/\W+/g, "-");
  return (
    <TextField
      {...givenProps({ name, value, defaultValue, onChange, inputMode })}
      type={type}
      autoComplete={autoComplete}
      isRequired={isRequired}
      isDisabled={isDisabled}
      isInvalid={error !== undefined}
      validationBehavior="aria"
      className={classList(styles.field, styles[size])}
    >
      <Label className={classList(styles.label)}>{label}</Label>
      {size === "rows" ? (
        <TextArea rows={3} className={classList(styles.input)} {...givenProps({ placeholder })} />
      ) : (
        <Input className={classList(styles.input)} {...givenProps({ placeholder, list })} />
      )}
      {suggestions && (
        <datalist id={list}>
          {suggestions.map((word) => (
            <option key={word} value={word} />
          ))}
        </datalist>
      )}
      {hint === undefined ? null : (
        <Text slot="description" className={classList(styles.hint)}>
          {hint}
        </Text>
      )}
      <FieldError className={classList(styles.error)}>{error}</FieldError>
    </TextField>
  );
}
