import type { ImportRun } from "#prisma/records/import/import-runs";
import { askedValues, valueChoices } from "#prisma/records/import/import-values";
import { ButtonLink } from "../../../../_parts/button-link";
import { RecordForm } from "../../../../_parts/record-form";
import { withImportConnection } from "../../../../import/with-import-connection";
import { answerValues } from "../../actions";
import { valueField } from "../../value-form";
import { CancelForm } from "./cancel-form";
import { MappingStep } from "./mapping-step";
import { PreviewStep } from "./preview-step";
import { Problems } from "./problems";
import { Progress } from "./progress";

/** What is to do, or to see, at the point where an import stands. */
export function RunStep({ run }: { readonly run: ImportRun }) {
  switch (run.state) {
    case "uploaded":
      return <MappingStep run={run} />;
    case "reading":
    case "committing":
      return <Progress runId={run.id} state={run.state} rowsRead={run.rowsRead} />;
    case "asking":
      return <ValuesStep run={run} />;
    case "ready":
      return <PreviewStep run={run} />;
    case "committed":
      return <ButtonLink href="/parcels">See the parcels</ButtonLink>;
    case "refused":
      return <Problems problems={run.problems} />;
    case "cancelled":
      return <ButtonLink href="/setup/import">Choose a file</ButtonLink>;
    default:
      return run.state satisfies never;
  }
}

function ValuesStep({ run }: { readonly run: ImportRun }) {
  const fields = withImportConnection((db) =>
    askedValues(db).map((value) => valueField(value, valueChoices(db, value.kind))),
  );
  return (
    <>
      <p>Choose what each means in your shop, or add it. The answers are kept for the next file.</p>
      <RecordForm
        action={answerValues.bind(null, run.id)}
        fields={fields}
        submit="Read the file with these"
        label="Unknown texts"
        tone="primary"
      />
      <CancelForm runId={run.id} />
    </>
  );
}
