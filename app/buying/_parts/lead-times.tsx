import { Section } from "../../_parts/section";
import { type LeadTimeRow, leadTimeFinding } from "../lead-time-rows";
import styles from "./buying.module.css";

/** How long it really took, by supplier, and how long the next order is taken to take. */
export function LeadTimes({ rows }: { readonly rows: readonly LeadTimeRow[] }) {
  if (rows.length === 0) return null;
  return (
    <Section
      title={leadTimeFinding(rows)}
      id="lead-times"
      aside="The weekly check reckons with the last columns: the promise counts like four deliveries, your own ones count more as they come."
    >
      <table className={styles.table}>
        <caption className={styles.caption}>How long it really takes</caption>
        <thead>
          <tr>
            <th scope="col">Supplier</th>
            <th scope="col">Promised</th>
            <th scope="col">Orders early, on the day, late</th>
            <th scope="col">The next takes</th>
            <th scope="col">In 9 of 10 cases at most</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.supplierId}>
              <th scope="row" className={styles.name}>
                {row.supplier}
              </th>
              <td>{row.promised}</td>
              <td>{cameWords(row)}</td>
              <td>{daysWords(row.usualDays)}</td>
              <td>{daysWords(row.surelyDays)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Section>
  );
}

function cameWords(row: LeadTimeRow): string {
  if (row.early + row.onDay + row.late === 0) return "none yet: a guess from the promise";
  const most = row.mostLate === null ? "" : `, at most ${daysWords(row.mostLate)}`;
  return `${count(row.early)}, ${count(row.onDay)}, ${count(row.late)}${most}`;
}

/** Parts of orders make fractions: one digit is enough. */
function count(orders: number): string {
  return String(Number(orders.toFixed(1)));
}

function daysWords(days: number): string {
  return days === 1 ? "1 day" : `${days} days`;
}
