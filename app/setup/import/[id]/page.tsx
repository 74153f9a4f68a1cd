import { notFound } from "next/navigation";
import { importRunOf } from "#prisma/records/import/import-runs";
import { Page } from "../../../_parts/page";
import { withImportConnection } from "../../../import/with-import-connection";
import { runWords } from "../run-words";
import { RunStep } from "./_parts/run-step";

export const metadata = { title: "Import" };

/** One import: what would this file book? */
export default async function ImportRunPage({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const run = withImportConnection((db) => importRunOf(db, id));
  if (run === null) notFound();
  return (
    <Page finding={runWords(run)} aside={`${run.fileName}, from ${run.source}`}>
      <RunStep run={run} />
    </Page>
  );
}
