import Link from "next/link";
import { exportTables } from "#prisma/records/export";
import { Section } from "../../_parts/section";
import styles from "./setup.module.css";

/** Data in and out: import, every table as CSV, the backup and how to bring it back. */
export function TakeAway() {
  return (
    <>
      <Section title="Bring in what you sent before" id="import">
        <p>
          <Link href="/setup/import">Import parcels from a CSV file</Link>, a year of them at once if you
          like.
        </p>
      </Section>
      <Section
        title="Take everything away as plain tables"
        id="export"
        aside="CSV files, one for each table, as stored: amounts in 1/12,000 of the use unit, values in 1/10,000 of the smallest coin, lengths in micrometres, masses in milligrams. An empty cell means unknown. A text that a spreadsheet could take for a formula has an apostrophe before it."
      >
        <p>
          <a href="/api/export" download className={styles.download}>
            Download all tables in one archive
          </a>
        </p>
        <details className={styles.details}>
          <summary>Or one table at a time</summary>
          <ul className={styles.tables}>
            {exportTables.map((table) => (
              <li key={table}>
                <a href={`/api/export/${table}.csv`} download>
                  {table}
                </a>
              </li>
            ))}
          </ul>
        </details>
      </Section>
      <Section
        title="Keep a backup somewhere else"
        id="backup"
        aside="One file with all of it, as it is at this moment; checked against the database before you get it."
      >
        <p>
          <a href="/api/backup" download className={styles.download}>
            Download a backup
          </a>
        </p>
        <p>To bring one back, stop the program and type in its folder:</p>
        <pre className={styles.command}>
          <code>npm run restore -- path/to/the-backup.db</code>
        </pre>
        <p>The database that stood there before is kept beside it under a new name.</p>
      </Section>
    </>
  );
}
