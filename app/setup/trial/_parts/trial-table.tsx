import type { Figure, TrialRow } from "../trial-rows";
import styles from "./trial.module.css";

/** Figures of both settings, and their difference with whether chance could make it. */
export function TrialTable({
  rows,
  caption,
}: {
  readonly rows: readonly TrialRow[];
  readonly caption: string;
}) {
  return (
    <table className={styles.table}>
      <caption>{caption}</caption>
      <thead>
        <tr>
          <td />
          <th scope="col">As now</th>
          <th scope="col">To try</th>
          <th scope="col">Difference</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.label}>
            <th scope="row">
              {row.label}
              <span className={styles.aside}>{row.about}</span>
            </th>
            <FigureCell figure={row.present} />
            <FigureCell figure={row.tried} />
            <td>
              {row.difference.value}
              <span className={styles.aside}>{row.difference.within}</span>
              {row.difference.isChance ? <span className={styles.aside}>may be chance</span> : null}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function FigureCell({ figure }: { readonly figure: Figure }) {
  return (
    <td>
      {figure.value}
      <span className={styles.aside}>{figure.within}</span>
    </td>
  );
}
