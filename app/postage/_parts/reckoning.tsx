import type { ReckoningLine } from "#lib/postage/reckoning-line";
import styles from "./postage.module.css";

/** How a price was reached, line by line. */
export function Reckoning({ lines }: { readonly lines: readonly ReckoningLine[] }) {
  return (
    <dl className={styles.reckoning}>
      {lines.map(({ label, value, note }) => (
        <div key={`${label} ${value} ${note ?? ""}`} className={styles.line}>
          <dt>{label}</dt>
          <dd>
            {value}
            {note === null ? null : <span className={styles.note}>{note}</span>}
          </dd>
        </div>
      ))}
    </dl>
  );
}
