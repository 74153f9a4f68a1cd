import Link from "next/link";
import type { Compared, ComparedSupply } from "#lib/replenishment/trial/trial-steps";
import type { MoneyWords } from "../money-words";
import { furtherRows, mainRows, type TrialRow } from "../trial-rows";
import styles from "./trial.module.css";

const SHOWN = ["Days without a supply", "Need met from stock", "Orders", "Money tied up"];

type SuppliesTableProps = { readonly supplies: readonly ComparedSupply[]; readonly money: MoneyWords };

/** Each supply in both settings, those with most days without it first. */
export function SuppliesTable({ supplies, money }: SuppliesTableProps) {
  const sorted = supplies.toSorted((a, b) => daysOut(b) - daysOut(a));
  return (
    <div className={styles.scroll}>
      <table className={styles.table}>
        <caption>Each supply with the settings to try, and below it as now</caption>
        <thead>
          <tr>
            <th scope="col">Supply</th>
            <th scope="col">Days without it</th>
            <th scope="col">Need met</th>
            <th scope="col">Cycles without a shortage</th>
            <th scope="col">Order lines</th>
            <th scope="col">Tied up</th>
          </tr>
        </thead>
        <tbody>
          {sorted.map((supply) => (
            <tr key={supply.supplyId}>
              <th scope="row">
                <Link href={`/supplies/${supply.supplyId}`}>{supply.name}</Link>
              </th>
              {cellsOf(supply, money).map(({ label, row }) => (
                <td key={label}>
                  {row?.tried.value ?? "–"}
                  <span className={styles.aside}>{row?.present.value ?? "–"}</span>
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function cellsOf(supply: Compared, money: MoneyWords): { label: string; row: TrialRow | undefined }[] {
  const rows = [...mainRows(supply, money), ...furtherRows(supply, { money, hasRoom: false })];
  const [days, met, ...rest] = SHOWN;
  return [days ?? "", met ?? "", "Order cycles without a shortage", ...rest].map((label) => ({
    label,
    row: rows.find((row) => row.label === label),
  }));
}

function daysOut({ present, tried }: Compared): number {
  return Math.max(present.daysOut.mean, tried.daysOut.mean);
}
