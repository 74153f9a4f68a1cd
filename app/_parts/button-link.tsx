import Link from "next/link";
import type { ReactNode } from "react";
import type { ButtonTone } from "./button";
import styles from "./button.module.css";
import { classList } from "./class-list";

type ButtonLinkProps = {
  readonly href: string;
  readonly tone?: ButtonTone;
  readonly isWide?: boolean;
  readonly children: ReactNode;
};

/**
 * A link that looks like a button, for going to the screen where something is done.
 *
 * @example <ButtonLink href="/supplies/count">Start counting</ButtonLink>
 */
export function ButtonLink({ href, tone = "secondary", isWide = false, children }: ButtonLinkProps) {
  return (
    <Link href={href} className={classList(styles.button, styles[tone], isWide && styles.wide)}>
      {children}
    </Link>
  );
}
