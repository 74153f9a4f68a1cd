import { type ReactNode, useId } from "react";
import { classList } from "./class-list";
import styles from "./section.module.css";

type SectionProps = {
  readonly title: ReactNode;
  /** A quieter line under the title. */
  readonly aside?: ReactNode;
  /** The anchor of the section, for links to it. */
  readonly id?: string;
  /** A strong rule under the title, for a section that asks for something. */
  readonly rule?: "strong" | "none";
  readonly children?: ReactNode;
};

/**
 * A part of a screen under its own h2.
 *
 * @example <Section title="Place these orders" rule="strong">…</Section>
 */
export function Section({ title, aside, id, rule = "none", children }: SectionProps) {
  const titleId = useId();
  return (
    <section {...(id === undefined ? {} : { id })} aria-labelledby={titleId} className={styles.section}>
      <h2 id={titleId} className={classList(styles.title, rule === "strong" && styles.strong)}>
        {title}
      </h2>
      {aside === undefined ? null : <p className={styles.aside}>{aside}</p>}
      {children}
    </section>
  );
}
