import Link from "next/link";
import type { CheckRow } from "#lib/replenishment/weekly-check";
import { formatAmount, formatEstimate } from "#lib/units/amount-text";
import { actionWords } from "../action-words";
import type { CoverAxis } from "../cover-axis";
import { coverMarks } from "../cover-marks";
import { CoverDates, CoverLegend, CoverStrip, weekLines } from "./cover-strip";
import styles from "./cover-table.module.css";
import { Explanation } from "./explanation";

type CoverTableProps = { readonly rows: readonly CheckRow[]; readonly axis: CoverAxis };

/** Every supply against the same weeks, the most urgent first, each with its sentence and how it was worked out. */
export function CoverTable({ rows, axis }: CoverTableProps) {
  return (
    <>
      <table className={styles.table} style={weekLines(axis)}>
        <caption className={styles.caption}>How long each supply lasts, the most urgent first</caption>
        <thead>
          <tr className={styles.row}>
            <th scope="col">Supply</th>
            <th scope="col">On hand, use</th>
            <th scope="col">
              <span className={styles.caption}>Cover over the coming ten weeks</span>
              <CoverDates axis={axis} />
            </th>
            <th scope="col">What to do</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <CoverRow key={row.supplyId} row={row} axis={axis} />
          ))}
        </tbody>
      </table>
      <CoverLegend />
    </>
  );
}

function CoverRow({ row, axis }: { readonly row: CheckRow; readonly axis: CoverAxis }) {
  const { tone, before, asked, after } = actionWords(row);
  return (
    <>
      <tr className={styles.row}>
        <th scope="row" className={styles.supply}>
          <Link href={`/supplies/${row.supplyId}`}>{row.supply}</Link>
        </th>
        <td className={styles.figures}>
          <span className={styles.onHand}>{onHandWords(row)}</span>
          <span className={styles.use}>{useWords(row)}</span>
        </td>
        <td className={styles.cover}>
          <CoverStrip marks={coverMarks(row, axis)} tone={tone} />
        </td>
        <td className={styles.todo}>
          <span className={styles.sentence}>
            {before}
            {asked === "" ? null : (
              <strong className={styles[tone]}>
                {row.action === "count" ? (
                  <Link href={`/supplies/count#${row.supplyId}`}>{asked}</Link>
                ) : (
                  asked
                )}
              </strong>
            )}
            {after}
          </span>
          {row.guess === null ? null : <span className={styles.guess}>A guess: {row.guess}</span>}
        </td>
      </tr>
      <tr className={styles.why}>
        <td colSpan={4}>
          <Explanation supplyId={row.supplyId} supply={row.supply} lines={row.explanation} />
        </td>
      </tr>
    </>
  );
}

function onHandWords(row: CheckRow): string {
  return row.onHand === null ? "never counted" : formatAmount(row.onHand, row.unit);
}

function useWords(row: CheckRow): string {
  if (row.usePerWeek === null || row.usePerWeek === 0) return "no use yet";
  return `${formatEstimate(row.usePerWeek, row.unit)} a week`;
}
