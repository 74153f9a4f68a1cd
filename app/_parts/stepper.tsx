"use client";

import { useRef, useState } from "react";
import { Button as AriaButton } from "react-aria-components";
import { classList } from "./class-list";
import { givenProps } from "./given-props";
import styles from "./stepper.module.css";

type StepperProps = {
  /** What is stepped: "tissue 20 × 30, first wrap". */
  readonly label: string;
  /** The value as it is read: "1⅓ sheets". */
  readonly text: string;
  readonly onLess: () => void;
  readonly onMore: () => void;
  readonly isLessDisabled?: boolean;
  readonly isMoreDisabled?: boolean;
  /** When given, the value may be typed; called with the text on Enter and on leaving the field. */
  readonly onText?: (typed: string) => void;
  readonly name?: string;
};

/**
 * − value +, with targets of 56 px on a phone. The caller holds the value and says what one step is.
 *
 * @example <Stepper label="bubble" text="6 pieces" onLess={less} onMore={more} onText={readAmount} />
 */
export function Stepper(props: StepperProps) {
  const { label, text, onLess, onMore, isLessDisabled = false, isMoreDisabled = false, onText, name } = props;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would bring a frame of its own around one value
    <div role="group" aria-label={label} className={styles.stepper}>
      <AriaButton
        aria-label={`Less ${label}`}
        isDisabled={isLessDisabled}
        onPress={onLess}
        className={classList(styles.step)}
      >
        <span aria-hidden="true">−</span>
      </AriaButton>
      {onText === undefined ? (
        <output className={styles.value}>{text}</output>
      ) : (
        <TypedValue key={text} label={label} text={text} onText={onText} {...givenProps({ name })} />
      )}
      <AriaButton
        aria-label={`More ${label}`}
        isDisabled={isMoreDisabled}
        onPress={onMore}
        className={classList(styles.step)}
      >
        <span aria-hidden="true">+</span>
      </AriaButton>
    </div>
  );
}

type TypedValueProps = { label: string; text: string; name?: string; onText: (typed: string) => void };

/** The value as a field: what is typed counts once the packer presses Enter or leaves it. */
function TypedValue({ label, text, name, onText }: TypedValueProps) {
  const [draft, setDraft] = useState(text);
  const told = useRef(text);
  const commit = () => {
    if (draft === told.current) return;
    // What could not be read and was put back must be heard too, or its error would stay.
    told.current = draft;
    onText(draft);
  };
  return (
    <input
      aria-label={label}
      className={styles.value}
      value={draft}
      autoComplete="off"
      {...givenProps({ name })}
      onChange={(event) => setDraft(event.target.value)}
      onFocus={(event) => event.target.select()}
      onBlur={commit}
      onKeyDown={(event) => {
        if (event.key !== "Enter") return;
        event.preventDefault();
        commit();
      }}
    />
  );
}
