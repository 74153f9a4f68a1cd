import type { ReactNode } from "react";
import { classList } from "./class-list";
import styles from "./page.module.css";

type PageProps = {
  /** The first line: what the screen found, in words. */
  readonly finding: ReactNode;
  /** A quieter line under the finding: dates, sources, what was guessed. */
  readonly aside?: ReactNode;
  /** Links or buttons that belong to the whole screen. */
  readonly actions?: ReactNode;
  /** `narrow` for forms and reading; the default takes the table's width. */
  readonly width?: "wide" | "narrow";
  readonly children?: ReactNode;
};

/**
 * The frame of a screen: the finding as its one h1, an aside under it, then the content.
 *
 * @example <Page finding="Six supplies are on the shelf." aside="Counted this month."><Section …/></Page>
 */
export function Page({ finding, aside, actions, width = "wide", children }: PageProps) {
  return (
    <main id="content" tabIndex={-1} className={classList(styles.page, width === "narrow" && styles.narrow)}>
      <header className={styles.head}>
        <h1 className={styles.finding}>{finding}</h1>
        {aside === undefined ? null : <p className={styles.aside}>{aside}</p>}
        {actions === undefined ? null : <div className={styles.actions}>{actions}</div>}
      </header>
      {children}
    </main>
  );
}
