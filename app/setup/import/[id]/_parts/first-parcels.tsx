import { day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import type { ImportPreview } from "#prisma/records/import/import-preview";
import { Section } from "../../../../_parts/section";
import styles from "../../import.module.css";

const FATE_WORDS: Readonly<Record<string, string>> = {
  new: "new",
  changed: "changed",
  same: "known",
  kept: "stays as put right by hand",
};

/** The first parcels of a preview, those that change before the others. */
export function FirstParcels({ parcels }: { readonly parcels: ImportPreview["parcels"] }) {
  const rows = parcels.map((parcel, index) => ({ ...parcel, place: index }));
  return (
    <Section title="The first parcels">
      <div className={styles.scroll}>
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col">Packed</th>
              <th scope="col">Order</th>
              <th scope="col">Item type</th>
              <th scope="col" className={styles.number}>
                Pieces
              </th>
              <th scope="col">Style</th>
              <th scope="col">What happens</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((parcel) => (
              <tr key={parcel.place}>
                <td>{formatDay(day(parcel.packedOn), { year: true })}</td>
                <td>{parcel.orderRef ?? "no reference"}</td>
                <td>{parcel.itemType}</td>
                <td className={styles.number}>{parcel.pieces}</td>
                <td>{parcel.style}</td>
                <td>{FATE_WORDS[parcel.fate] ?? parcel.fate}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </Section>
  );
}
