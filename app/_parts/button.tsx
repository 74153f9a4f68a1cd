"use client";

import type { ReactNode } from "react";
import { Button as AriaButton, type ButtonProps as AriaButtonProps } from "react-aria-components";
import styles from "./button.module.css";
import { classList } from "./class-list";

export type ButtonTone = "primary" | "secondary" | "plain";

type ButtonProps = Omit<AriaButtonProps, "className" | "children"> & {
  /** `primary` once per screen, `secondary` beside it, `plain` for small words among text. */
  readonly tone?: ButtonTone;
  /** Takes the whole width of what it stands in. */
  readonly isWide?: boolean;
  readonly children?: ReactNode;
};

/**
 * A button. Without `type` it does not send its form; give `type="submit"` for that, which also works
 * before the page is interactive.
 *
 * @example <Button tone="primary" type="submit">Record</Button>
 */
export function Button({ tone = "secondary", isWide = false, ...rest }: ButtonProps) {
  return <AriaButton {...rest} className={classList(styles.button, styles[tone], isWide && styles.wide)} />;
}
