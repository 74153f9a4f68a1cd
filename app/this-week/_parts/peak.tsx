import { formatEstimate } from "#lib/units/amount-text";
import { formatDay } from "#lib/units/day-text";
import { Section } from "../../_parts/section";
import type { PeakRow } from "../peak-rows";
import styles from "./count-first.module.css";

/** What to have in the house before the peak; nothing where none is coming. */
export function Peak({ rows }: { readonly rows: readonly PeakRow[] }) {
  if (rows.length === 0) return null;
  return (
    <Section
      title="Before the peak"
      aside="By last year’s shape and your planned events, as far as they are known."
    >
      <ul className={styles.list}>
        {rows.map((row) => (
          <li key={row.supplyId}>
            <span className={styles.supply}>{row.name}</span>
            <span className={styles.reason}>
              {row.times.toFixed(1)} times this week’s use in the week from {formatDay(row.busiestWeek)};{" "}
              {formatEstimate(row.needed, row.unit)} until {formatDay(row.until)}, of which{" "}
              {formatEstimate(row.missing, row.unit)} are still to come.
            </span>
          </li>
        ))}
      </ul>
    </Section>
  );
}
