import Link from "next/link";
import type { AskedDay } from "../../this-week/asked-day";
import { changeCell } from "../change-words";
import { type OutlookNow, withDay } from "../outlook-now";
import { quantity, quantityRange } from "../quantity";
import type { OutlookRow } from "../read-outlook";
import { sureWords } from "../sure-words";
import styles from "./outlook-table.module.css";

type OutlookTableProps = {
  /** what the rows are: "Supply" */
  readonly head: string;
  readonly rows: readonly OutlookRow[];
  readonly asked: OutlookNow["asked"];
};

/** What is expected of each in the next four weeks; on a phone each row becomes a short block. */
export function OutlookTable({ head, rows, asked }: OutlookTableProps) {
  return (
    <table className={styles.table}>
      <thead>
        <tr>
          <th scope="col">{head}</th>
          <th scope="col">Next 4 weeks</th>
          <th scope="col">Against the last 4</th>
          <th scope="col">How sure</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <Row key={row.subject.id} row={row} asked={asked} />
        ))}
      </tbody>
    </table>
  );
}

function Row({ row, asked }: { readonly row: OutlookRow; readonly asked: AskedDay }) {
  const { subject, total, before, guessedShare } = row;
  const { mean, low, high } = total;
  return (
    <tr>
      <th scope="row">
        <Link href={withDay(subject.href, asked)} className={styles.name}>
          {subject.name}
        </Link>
      </th>
      <td data-label="Next 4 weeks">
        <span>
          {quantity(mean, subject.unit)}
          <span className={styles.band}>{quantityRange(low, high, subject.unit)}</span>
        </span>
      </td>
      <td data-label="The last 4">{changeCell(mean, before, subject.unit)}</td>
      <td data-label="How sure">{sureWords({ mean, low, high, guessedShare })}</td>
    </tr>
  );
}
