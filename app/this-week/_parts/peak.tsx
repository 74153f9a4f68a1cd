import { formatDay } from "#lib/units/day-text";
import { Section } from "../../_parts/section";
import type { PeakRow } from "../peak-rows";
import { amountToHave, busiestWords } from "../peak-words";
import styles from "./count-first.module.css";

/** What to have in the house before the peak; nothing where none is coming. */
export function Peak({ rows }: { readonly rows: readonly PeakRow[] }) {
  if (rows.length === 0) return null;
  const { together, each } = busiestWords(rows);
  return (
    <Section
      title="Before the peak"
      aside={`${together}By last year’s shape and your planned events, as far as they are known.`}
    >
      <ul className={styles.list}>
        {rows.map((row) => (
          <li key={row.supplyId}>
            <span className={styles.supply}>{row.name}</span>
            <span className={styles.reason}>
              {each(row)}
              {amountToHave(row.needed, row.unit)} until {formatDay(row.until)}, of which{" "}
              {amountToHave(row.missing, row.unit)} are still to come.
            </span>
          </li>
        ))}
      </ul>
    </Section>
  );
}
