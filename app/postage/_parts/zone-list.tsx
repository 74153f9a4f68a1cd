import { RecordForm } from "../../_parts/record-form";
import { Section } from "../../_parts/section";
import { addZone } from "../../setup/calendar-actions";
import { renameZone } from "../zone-actions";
import styles from "./postage.module.css";

type ZoneListProps = {
  readonly zones: readonly { readonly id: string; readonly name: string; readonly parcels: number }[];
  /** parcels of the span without a zone */
  readonly without: number;
};

/** The shop's zones and how many parcels of the last half year went to each. */
export function ZoneList({ zones, without }: ZoneListProps) {
  return (
    <Section
      title="Zones"
      id="zones"
      aside="Where parcels go, as the carrier prices it. A zone depends on both ends of the way: the carrier's own list says which is yours."
    >
      <ul className={styles.zones}>
        {zones.map(({ id, name, parcels }) => (
          <li key={id} className={styles.zone}>
            <p>
              <b>{name}</b>: {countWords(parcels)} in the last half year
            </p>
            <details className={styles.fold}>
              <summary>Rename {name}</summary>
              <RecordForm
                action={renameZone.bind(null, id)}
                label={`Rename ${name}`}
                layout="line"
                fields={[{ name: "name", label: "Name", kind: "text", value: name, required: true }]}
                submit="Rename"
              />
            </details>
          </li>
        ))}
      </ul>
      {without === 0 ? null : (
        <p className={styles.small}>
          {countWords(without)} had no zone: what {without === 1 ? "it" : "they"} should have cost can’t be
          told.
        </p>
      )}
      <RecordForm
        action={addZone}
        label="New zone"
        layout="line"
        fields={[{ name: "name", label: "Zone", kind: "text", hint: "zone 4, abroad", required: true }]}
        submit="Add the zone"
      />
    </Section>
  );
}

function countWords(parcels: number): string {
  if (parcels === 0) return "no parcel";
  return parcels === 1 ? "1 parcel" : `${parcels} parcels`;
}
