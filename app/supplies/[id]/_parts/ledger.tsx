import Link from "next/link";
import { RecordForm } from "../../../_parts/record-form";
import { Section } from "../../../_parts/section";
import type { LedgerRow } from "../ledger-rows";
import { takeBack } from "../stock-actions";
import styles from "./ledger.module.css";

type LedgerProps = { readonly rows: readonly LedgerRow[]; readonly olderHref: string | null };

/** The ledger of a supply, newest first. Lines are never changed; one that is wrong is taken back by another. */
export function Ledger({ rows, olderHref }: LedgerProps) {
  if (rows.length === 0) return null;
  return (
    <Section
      title="Every movement is kept"
      id="ledger"
      aside="Newest first. A wrong line is taken back by a line of its own."
    >
      <ol className={styles.list}>
        {rows.map((row) => (
          <li key={row.id} className={styles.row}>
            <span className={styles.when}>{row.when}</span>
            <span className={styles.what}>
              {row.cause}
              {row.isReversed ? " (taken back since)" : ""}
              {row.parcelId === null ? null : (
                <>
                  {" "}
                  <Link href={`/parcels/${row.parcelId}`}>the parcel</Link>
                </>
              )}
              <span className={styles.words}>{[row.words, row.recordedBy].filter(Boolean).join(" · ")}</span>
            </span>
            <span className={styles.amount}>
              {row.amount}
              {row.typed === null ? null : <span className={styles.words}>typed {row.typed}</span>}
            </span>
            {row.canBeTakenBack ? (
              <details className={styles.takeBack}>
                <summary aria-label={`Take back: ${row.when}, ${row.cause}, ${row.amount}`}>
                  Take back
                </summary>
                <RecordForm
                  action={takeBack}
                  label={`Take back line ${row.id}: ${row.cause} of ${row.when}`}
                  fields={[
                    { name: "movementId", label: "", kind: "hidden", value: String(row.id) },
                    { name: "reason", label: "Why", kind: "text", required: true },
                  ]}
                  submit="Take this line back"
                />
              </details>
            ) : null}
          </li>
        ))}
      </ol>
      {olderHref === null ? null : <Link href={olderHref}>Older movements</Link>}
    </Section>
  );
}
