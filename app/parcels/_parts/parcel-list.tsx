import Link from "next/link";
import { day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import { formatMass, milligrams } from "#lib/units/mass";
import { costValue } from "#lib/units/money";
import type { ParcelSummary } from "#prisma/records/parcel-lists";
import type { Shop } from "#prisma/records/shop";
import { classList } from "../../_parts/class-list";
import { costText } from "../cost-text";
import { cartonsText, contentsText, fateText } from "../parcel-text";
import styles from "./parcels.module.css";

type ParcelListProps = { readonly parcels: readonly ParcelSummary[]; readonly shop: Shop };

/** The parcels, one row each; the contents lead to the parcel's own page. */
export function ParcelList({ parcels, shop }: ParcelListProps) {
  return (
    <table className={styles.list}>
      <caption className={styles.caption}>Parcels, newest first</caption>
      <thead>
        <tr>
          <th scope="col">Packed</th>
          <th scope="col">What</th>
          <th scope="col">Carton</th>
          <th scope="col">Style</th>
          <th scope="col">Order</th>
          <th scope="col" className={styles.figure}>
            Weight
          </th>
          <th scope="col" className={styles.figure}>
            Packing
          </th>
        </tr>
      </thead>
      <tbody>
        {parcels.map((parcel) => (
          <ParcelRow key={parcel.id} parcel={parcel} shop={shop} />
        ))}
      </tbody>
    </table>
  );
}

function ParcelRow({ parcel, shop }: { readonly parcel: ParcelSummary; readonly shop: Shop }) {
  const fate = fateText(parcel);
  return (
    <tr className={classList(parcel.voidedAt !== null && styles.void)}>
      <td>{formatDay(day(parcel.packedOn), { weekday: true })}</td>
      <th scope="row" className={styles.what}>
        <Link href={`/parcels/${encodeURIComponent(parcel.id)}`}>{contentsText(parcel.pieces)}</Link>
        {fate.length === 0 ? null : <span className={styles.fate}>{fate.join(", ")}</span>}
      </th>
      <td>{cartonsText(parcel.cartons)}</td>
      <td>{parcel.style}</td>
      <td>{parcel.orders.map((order) => order.reference).join(", ")}</td>
      <td className={styles.figure}>{weightText(parcel, shop)}</td>
      <td className={styles.figure}>{packingText(parcel, shop)}</td>
    </tr>
  );
}

function packingText({ voidedAt, costValue: cost }: ParcelSummary, shop: Shop): string {
  if (voidedAt !== null) return "void";
  return cost === null ? "cost not known" : costText(costValue(cost), shop);
}

function weightText(parcel: ParcelSummary, shop: Shop): string {
  if (parcel.scaleMg === null) return "not weighed";
  return formatMass(milligrams(parcel.scaleMg), shop.measures);
}
