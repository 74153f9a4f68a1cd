import type { ReactNode } from "react";
import styles from "./asks.module.css";

/** What the week asks for, side by side where there is room: the orders, then what to count. */
export function Asks({ children }: { readonly children: ReactNode }) {
  return <div className={styles.asks}>{children}</div>;
}
