import Link from "next/link";
import { importRunsOf } from "#prisma/records/import/import-runs";
import { Page } from "../../_parts/page";
import { Section } from "../../_parts/section";
import { withImportConnection } from "../../import/with-import-connection";
import { UploadForm } from "./_parts/upload-form";
import { runWords } from "./run-words";

export const metadata = { title: "Import" };

const RUNS_SHOWN = 10;

/** Import: which parcels does another program know of? */
export default function ImportPage() {
  const runs = withImportConnection((db) => importRunsOf(db, RUNS_SHOWN));
  return (
    <Page
      finding="Bring in parcels from a CSV file."
      aside="Needed are the day packed and the item type. You see what would be booked before anything is. Columns that you do not choose, such as names and addresses, are not kept."
      width="narrow"
    >
      <UploadForm source={runs[0]?.source ?? "Orders"} />
      {runs.length === 0 ? null : (
        <Section title="Earlier files">
          <ul>
            {runs.map((run) => (
              <li key={run.id}>
                <Link href={`/setup/import/${run.id}`}>{run.fileName}</Link>: {runWords(run)}
              </li>
            ))}
          </ul>
        </Section>
      )}
    </Page>
  );
}
