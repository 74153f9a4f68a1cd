import type { Database } from "#prisma/client";
import { zonesOf } from "#prisma/records/zones";
import { RecordForm } from "../../_parts/record-form";
import { Section } from "../../_parts/section";
import { addZone, retireZone } from "../calendar-actions";
import styles from "./setup.module.css";

/** Where parcels go, as the postage is priced. */
export async function Zones({ db }: { readonly db: Database }) {
  const zones = await zonesOf(db);
  return (
    <Section
      title={zones.length === 0 ? "No zones: every parcel counts as one" : "Where parcels go"}
      id="zones"
    >
      <ul className={styles.list}>
        {zones.map((zone) => (
          <li key={zone.id} className={styles.line}>
            {zone.name}
            <RecordForm
              action={retireZone.bind(null, zone.id)}
              label={`Take off ${zone.name}`}
              fields={[]}
              submit="Take off"
              tone="plain"
            />
          </li>
        ))}
      </ul>
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
