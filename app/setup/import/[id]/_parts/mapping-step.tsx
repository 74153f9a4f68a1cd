import { rememberedMapping } from "#prisma/records/import/import-mapping";
import type { ImportRun } from "#prisma/records/import/import-runs";
import { classList } from "../../../../_parts/class-list";
import { RecordForm } from "../../../../_parts/record-form";
import { Section } from "../../../../_parts/section";
import { type FileHead, fileHead } from "../../../../import/file-head";
import { guessedMapping } from "../../../../import/guessed-mapping";
import { uploadedFile } from "../../../../import/uploaded-file";
import { withImportConnection } from "../../../../import/with-import-connection";
import { chooseMapping } from "../../actions";
import styles from "../../import.module.css";
import { mappingFields } from "../../mapping-form";
import { CancelForm } from "./cancel-form";
import { Problems } from "./problems";

const ROWS_SHOWN = 5;

/** Chooses which column is which, over the first rows of the file. */
export async function MappingStep({ run }: { readonly run: ImportRun }) {
  const head = await fileHead(uploadedFile(run.id));
  if (head.kind === "not-text") return <Problems problems={{ problems: [head], total: 1 }} />;
  if (head.kind === "broken") {
    return <Problems problems={{ problems: [{ kind: "broken-quotes", line: head.line }], total: 1 }} />;
  }
  const known = withImportConnection((db) => rememberedMapping(db, head.headerHash));
  return (
    <>
      <SampleRows head={head} />
      <Section
        title="Which column is which?"
        aside={
          known === null ? "Guessed from the names of the columns." : "As for the last file like this one."
        }
      >
        <RecordForm
          action={chooseMapping.bind(null, run.id)}
          fields={mappingFields(head, known ?? guessedMapping(head))}
          submit="Read the file"
          label="Columns"
          tone="primary"
        />
      </Section>
      <CancelForm runId={run.id} />
    </>
  );
}

function SampleRows({ head }: { readonly head: Extract<FileHead, { kind: "head" }> }) {
  const rows = head.sample.slice(0, ROWS_SHOWN).map((cells, row) => ({ cells, row: row + 1 }));
  return (
    <Section title="The first rows">
      <div className={styles.scroll}>
        <table className={classList(styles.table, styles.sample)}>
          <thead>
            <tr>
              {head.columns.map((column) => (
                <th key={column} scope="col">
                  {column}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ cells, row }) => (
              <tr key={row}>
                {head.columns.map((column, index) => (
                  <td key={column}>{cells[index]}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </Section>
  );
}
