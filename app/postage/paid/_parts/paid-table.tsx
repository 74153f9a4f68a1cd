import Link from "next/link";
import type { PaidVerdict } from "#lib/postage/paid-verdict";
import { day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import { formatMoney } from "#lib/units/money";
import { classList } from "../../../_parts/class-list";
import { contentsText } from "../../../parcels/parcel-text";
import styles from "../../_parts/postage.module.css";
import { type CheckedParcel, reasonWords } from "../paid-check";

type PaidTableProps = {
  readonly caption: string;
  readonly rows: readonly CheckedParcel[];
  readonly zoneName: (id: string) => string;
  readonly shop: { readonly currency: string; readonly minorDigits: number };
};

function isOff(verdict: PaidVerdict): verdict is PaidVerdict & { readonly kind: "over" | "under" } {
  return verdict.kind === "over" || verdict.kind === "under";
}

/** Parcels that cost something else than the card says, the largest difference first. */
export function PaidTable({ caption, rows, zoneName, shop }: PaidTableProps) {
  const money = (minor: number) => formatMoney(minor, shop.currency, shop.minorDigits);
  return (
    <div className={styles.open}>
      <table className={classList(styles.table, styles.payments)}>
        <caption className={styles.caption}>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">Parcel and likely reason</th>
            <th scope="col" className={styles.price}>
              Paid
            </th>
            <th scope="col" className={styles.price}>
              By the card
            </th>
            <th scope="col" className={styles.price}>
              Difference
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ row, verdict }) =>
            isOff(verdict) ? (
              <tr key={row.id}>
                <th scope="row">
                  <Link href={`/parcels/${encodeURIComponent(row.id)}`}>{contentsText(row.pieces)}</Link>
                  <span className={styles.note}>
                    {formatDay(day(row.postedOn ?? row.packedOn))}, {verdict.question.weight.text} to{" "}
                    {zoneName(verdict.question.zone)}
                  </span>
                  <span className={styles.reason}>{reasonWords(verdict, zoneName)}</span>
                </th>
                <td className={styles.price} data-label="paid">
                  {money(row.postageMinor)}
                </td>
                <td className={styles.price} data-label="by the card">
                  {money(verdict.cardMinor)}
                </td>
                <td className={styles.price} data-label="difference">
                  {money(verdict.byMinor)} {verdict.kind === "over" ? "more" : "less"}
                </td>
              </tr>
            ) : null,
          )}
        </tbody>
      </table>
    </div>
  );
}
