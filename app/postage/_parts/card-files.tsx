import { ButtonLink } from "../../_parts/button-link";
import { RecordForm } from "../../_parts/record-form";
import { Section } from "../../_parts/section";
import { importRateCards } from "../actions";
import { cardFileExample } from "../card-file-example";
import { CardFileField } from "./card-file-field";
import styles from "./postage.module.css";

type CardFilesProps = {
  readonly zones: readonly string[];
  readonly currency: string;
  readonly hasCards: boolean;
};

/** Cards in and out as CSV, with what each row says. */
export function CardFiles({ zones, currency, hasCards }: CardFilesProps) {
  return (
    <Section title="Import and export" id="files" aside="All cards of a file are kept, or none of them.">
      {hasCards ? (
        <p>
          <a href="/api/rate-cards.csv" download>
            Take all cards away as CSV
          </a>
        </p>
      ) : null}
      <RecordForm action={importRateCards} label="Import cards" fields={[]} submit="Import the cards">
        <CardFileField />
      </RecordForm>
      <details className={styles.fold}>
        <summary>What the rows of such a file say</summary>
        <p>
          The first row names the columns: row, what, value, then your zones. A card begins with its service
          and may be followed by another. Prices stand under the zones; a dash says that the carrier gives
          none, and an empty cell is refused. A zone whose cells are all empty is not on the card. Weights and
          sizes have their unit, days are written 2026-11-25. Bands with a name (band, name, Small) hold their
          own limits and steps; the first that takes a parcel counts. “Each side” and “weight” are rounded up
          to, nearest, down to, or as it is; “size, zones” with yes under a zone limits the rule to it.
        </p>
        <pre className={styles.example}>{cardFileExample(zones, currency)}</pre>
      </details>
      <p className={styles.small}>
        <ButtonLink href="/setup/import" tone="plain">
          Parcels are imported elsewhere
        </ButtonLink>
      </p>
    </Section>
  );
}
