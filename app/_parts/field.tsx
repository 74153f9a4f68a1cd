"use client";

import { type ChangeEvent, type HTMLInputTypeAttribute, useEffect, useId, useRef } from "react";
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
 * dates (`type="date"`). It is the browser's own field: it sends `name` with its form before the page is
 * interactive, and what was typed until then stays.
 *
 * @example <Field label="On the shelf" name="amount" inputMode="decimal" hint="174 or 1 1/3" size="short" />
 */
export function Field({ label, hint, error, size = "line", placeholder, suggestions, ...field }: FieldProps) {
  const { name, value, defaultValue, onChange, type = "text", inputMode, autoComplete = "off" } = field;
  const { isRequired = false, isDisabled = false } = field;
  const id = useId();
  const typed = useTypedBefore(value, onChange);
  const list = suggestions && `${id}-list`;
  const described = [hint === undefined ? "" : `${id}-hint`, error === undefined ? "" : `${id}-error`];
  const given = {
    id,
    autoComplete,
    className: styles.input,
    "aria-invalid": error !== undefined,
    "aria-required": isRequired,
    disabled: isDisabled,
    ...givenProps({ name, value, defaultValue, inputMode, placeholder }),
    ...givenProps({ "aria-describedby": classList(...described) || undefined }),
    ...(onChange && {
      onChange: (event: ChangeEvent<HTMLInputElement | HTMLTextAreaElement>) => onChange(event.target.value),
    }),
  };
  return (
    <div className={classList(styles.field, styles[size])}>
      <label htmlFor={id} className={styles.label}>
        {label}
      </label>
      {size === "rows" ? (
        <textarea rows={3} ref={typed} {...given} />
      ) : (
        <input type={type} ref={typed} {...given} {...givenProps({ list })} />
      )}
      {suggestions && (
        <datalist id={list}>
          {suggestions.map((word) => (
            <option key={word} value={word} />
          ))}
        </datalist>
      )}
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

/** Hands on what was typed into a field before its script ran, where a component holds its value. */
function useTypedBefore(value: string | undefined, onChange: FieldProps["onChange"]) {
  const element = useRef<(HTMLInputElement & HTMLTextAreaElement) | null>(null);
  const first = useRef({ value, onChange });
  useEffect(() => {
    const typed = element.current?.value;
    if (first.current.value === undefined || typed === undefined) return;
    if (typed !== first.current.value) first.current.onChange?.(typed);
  }, []);
  return element;
}
