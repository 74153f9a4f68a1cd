import { type CostChange, costChange } from "#lib/packing/cost-change/cost-change";
import { parcelsIn } from "#lib/packing/cost-change/packed-period";
import { day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import { formatMoney } from "#lib/units/money";
import type { PackedSpan } from "#prisma/records/packing-costs";
import type { Shop } from "#prisma/records/shop";
import { reasonsWords, toldChange } from "../cost-change-words";
import styles from "./changes.module.css";

/** A month of parcels. */
export type PackedMonth = { readonly month: string; readonly packed: PackedSpan };

type CostByMonthProps = {
  /** months with parcels, oldest first */
  readonly months: readonly PackedMonth[];
  readonly cartons: ReadonlySet<string>;
  readonly nameOf: (supplyId: string) => string;
  readonly shop: Shop;
};

/** What a parcel cost in each month of the last year, and what changed it since the month with parcels before. */
export function CostByMonth({ months, cartons, nameOf, shop }: CostByMonthProps) {
  const money = (minor: number) => formatMoney(minor, shop.currency, shop.minorDigits);
  const rows = months.map(({ month, packed }, index) => {
    const before = months[index - 1]?.packed ?? packed;
    const change: CostChange = costChange(before, packed, cartons);
    return { month, parcels: parcelsIn(packed), told: toldChange(change, nameOf), isFirst: index === 0 };
  });
  return (
    <table className={styles.table}>
      <caption>Mean material cost of a parcel as booked, and what changed it since the month above.</caption>
      <thead>
        <tr>
          <th scope="col">Month</th>
          <th scope="col" className={styles.figure}>
            Parcels
          </th>
          <th scope="col" className={styles.figure}>
            A parcel
          </th>
          <th scope="col">What changed</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ month, parcels, told, isFirst }) => (
          <tr key={month}>
            <th scope="row">{formatDay(day(`${month}-01`), { year: true }).replace(/^1 /, "")}</th>
            <td className={styles.figure}>{parcels}</td>
            <td className={styles.figure}>{money(told.nowMinor)}</td>
            <td>{isFirst || told.reasons.length === 0 ? "–" : reasonsWords(told.reasons, shop)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
