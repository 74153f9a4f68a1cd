import { classList } from "../../_parts/class-list";
import styles from "./paper-or-bubble.module.css";

type TableRow = {
  readonly name: string;
  readonly cells: readonly string[];
  /** a sum of the rows above it */
  readonly isSum?: boolean;
};

type RowsTableProps = {
  readonly caption: string;
  readonly head: string;
  readonly columns: readonly string[];
  readonly rows: readonly TableRow[];
};

/** A row for each part, a column for each way to pack; a name that begins with a space stands below the one before. */
export function RowsTable({ caption, head, columns, rows }: RowsTableProps) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard
    <section className={styles.wide} tabIndex={0} aria-label={caption}>
      <table className={classList(styles.table, styles.sideBySide)}>
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">{head}</th>
            {columns.map((name) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name, cells, isSum = false }) => (
            <tr key={name} className={classList(isSum && styles.sum)}>
              <th scope="row" className={classList(name.startsWith(" ") && styles.within)}>
                {name.trim()}
              </th>
              {cells.map((cell, at) => (
                <td key={columns[at]}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
