import { notFound } from "next/navigation";
import { importRunOf } from "#prisma/records/import/import-runs";
import { Page } from "../../../_parts/page";
import { fileHead } from "../../../import/file-head";
import { uploadedFile } from "../../../import/uploaded-file";
import { withImportConnection } from "../../../import/with-import-connection";
import { runWords } from "../run-words";
import { RunStep } from "./_parts/run-step";

export const metadata = { title: "Import" };

/** One import: what would this file book? */
export default async function ImportRunPage({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const run = withImportConnection((db) => importRunOf(db, id));
  if (run === null) notFound();
  const isUnreadable = run.state === "uploaded" && (await fileHead(uploadedFile(run.id))).kind !== "head";
  const finding = isUnreadable ? "This file can’t be read. Nothing was booked." : runWords(run);
  return (
    <Page finding={finding} aside={`${run.fileName}, from ${run.source}`}>
      <RunStep run={run} />
    </Page>
  );
}
