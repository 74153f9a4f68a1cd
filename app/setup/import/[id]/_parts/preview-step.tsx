import { day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import { type ImportPreview, importPreview } from "#prisma/records/import/import-preview";
import { type ImportRun, importedBefore } from "#prisma/records/import/import-runs";
import { Button } from "../../../../_parts/button";
import { Message } from "../../../../_parts/message";
import { Section } from "../../../../_parts/section";
import { withImportConnection } from "../../../../import/with-import-connection";
import { commitRun } from "../../actions";
import styles from "../../import.module.css";
import { parcelsWords } from "../../run-words";
import { CancelForm } from "./cancel-form";
import { FirstParcels } from "./first-parcels";

const PARCELS_SHOWN = 20;

/** What would be booked, and the yes to it. */
export function PreviewStep({ run }: { readonly run: ImportRun }) {
  const { before, preview } = withImportConnection((db) => ({
    before: importedBefore(db, run),
    preview: importPreview(db, run.id, PARCELS_SHOWN),
  }));
  return (
    <>
      {before === null ? null : (
        <Message kind="note" title={`This very file was imported before, on ${before.slice(0, 10)}.`}>
          Nothing is booked twice.
        </Message>
      )}
      <Counts run={run} preview={preview} />
      <div className={styles.answers}>
        {run.newParcels + run.changedParcels === 0 ? null : (
          <form action={commitRun.bind(null, run.id)} aria-label="Book the parcels">
            <Button type="submit" tone="primary">
              Book {parcelsWords(run.newParcels + run.changedParcels)}
            </Button>
          </form>
        )}
        <CancelForm runId={run.id} />
      </div>
      <ByType types={preview.types} />
      <FirstParcels parcels={preview.parcels} />
    </>
  );
}

function Counts({ run, preview }: { readonly run: ImportRun; readonly preview: ImportPreview }) {
  const { firstDay, lastDay } = preview;
  const added = [
    ...preview.newZones.map((name) => `zone “${name}”`),
    ...preview.newCartons.map((name) => `carton “${name}”`),
  ];
  return (
    <ul>
      <li>
        {run.rowsRead.toLocaleString("en-US")} rows
        {firstDay === null || lastDay === null
          ? ""
          : `, from ${formatDay(day(firstDay), { year: true })} to ${formatDay(day(lastDay), { year: true })}`}
      </li>
      <li>New: {parcelsWords(run.newParcels)}</li>
      <li>
        Changed since they were imported: {parcelsWords(run.changedParcels)}. Their old use is taken back.
      </li>
      <li>Known already: {parcelsWords(run.sameParcels)}</li>
      {preview.keptParcels === 0 ? null : (
        <li>
          Of those, {parcelsWords(preview.keptParcels)} put right or voided here by hand stay as they are.
        </li>
      )}
      {added.length === 0 ? null : <li>To be added: {added.join(", ")}</li>}
    </ul>
  );
}

function ByType({ types }: { readonly types: ImportPreview["types"] }) {
  return (
    <Section title="By item type" aside="A parcel counts under the type with most pieces in it.">
      <div className={styles.scroll}>
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col">Item type</th>
              <th scope="col" className={styles.number}>
                Parcels
              </th>
              <th scope="col" className={styles.number}>
                Pieces
              </th>
              <th scope="col">Note</th>
            </tr>
          </thead>
          <tbody>
            {types.map((type) => (
              <tr key={type.itemTypeId}>
                <th scope="row">{type.name}</th>
                <td className={styles.number}>{type.parcels.toLocaleString("en-US")}</td>
                <td className={styles.number}>{type.pieces.toLocaleString("en-US")}</td>
                <td>{typeNote(type)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </Section>
  );
}

function typeNote(type: ImportPreview["types"][number]): string {
  const added = type.isNew ? "A new item type. " : "";
  if (type.withoutUse === 0) return added.trim();
  return `${added}${parcelsWords(type.withoutUse)} without a recipe: no supplies are booked for them.`;
}
