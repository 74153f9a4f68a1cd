import type { ComparedSupply } from "#lib/replenishment/trial/trial-steps";
import type { MoneyWords } from "../money-words";
import styles from "./trial.module.css";

type BestTableProps = { readonly supplies: readonly ComparedSupply[]; readonly money: MoneyWords };

/** How far supplies are from the best reorder point and order size that there can be; only where that can be told. */
export function BestTable({ supplies, money }: BestTableProps) {
  const rows = supplies.flatMap(({ supplyId, name, best }) =>
    best === null ? [] : [{ supplyId, name, best }],
  );
  if (rows.length === 0) return null;
  return (
    <>
      <div className={styles.scroll}>
        <table className={styles.table}>
          <caption>Orders, keeping and shortages a year, and the least that any levels could come to</caption>
          <thead>
            <tr>
              <th scope="col">Supply</th>
              <th scope="col">As now</th>
              <th scope="col">Least as now</th>
              <th scope="col">To try</th>
              <th scope="col">Least to try</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ supplyId, name, best: { present, tried } }) => (
              <tr key={supplyId}>
                <th scope="row">{name}</th>
                <td>{money(present.own)}</td>
                <td>{money(present.best)}</td>
                <td>{money(tried.own)}</td>
                <td>{money(tried.best)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p className={styles.note}>
        The least is that of the best levels with as many days between looks. Only for whole pieces that are
        used steadily: as if every week had the average of these 13, each order cost what its share of a
        delivery did in the runs, and pieces were sold one by one. What a missing piece costs is a guess: just
        so much that the goal as now is worth its stock.
      </p>
    </>
  );
}
