import Link from "next/link";
import type { SupplyRow } from "../supply-rows";
import styles from "./supply-table.module.css";

const STATE_WORDS = {
  "never-counted": "Count this",
  "below-zero": "Count this: the book went below zero",
  counted: null,
} as const;

/** The table of supplies; on a phone each row becomes a short block. */
export function SupplyTable({ rows }: { readonly rows: readonly SupplyRow[] }) {
  if (rows.length === 0) return null;
  return (
    <table className={styles.table}>
      <thead>
        <tr>
          <th scope="col">Supply</th>
          <th scope="col">On hand</th>
          <th scope="col">Use</th>
          <th scope="col">Cost</th>
          <th scope="col">Last counted</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.id}>
            <th scope="row">
              <Link href={`/supplies/${row.id}`} className={styles.name}>
                {row.name}
              </Link>
            </th>
            <td data-label="On hand">
              {row.onHand}
              {STATE_WORDS[row.state] === null ? null : (
                <Link href={`/supplies/count#${row.id}`} className={styles.toCount}>
                  {STATE_WORDS[row.state]}
                </Link>
              )}
            </td>
            <td data-label="Use">{row.usePerWeek}</td>
            <td data-label="Cost">{row.unitCost}</td>
            <td data-label="Last counted">{row.counted}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
