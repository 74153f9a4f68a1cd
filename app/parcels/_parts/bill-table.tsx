import { amount } from "#lib/units/amount";
import { formatAmount } from "#lib/units/amount-text";
import { costValue } from "#lib/units/money";
import { isUseUnit } from "#lib/units/use-unit";
import type { ParcelDetail, ParcelMovement } from "#prisma/records/parcel-lists";
import type { Shop } from "#prisma/records/shop";
import { classList } from "../../_parts/class-list";
import { costText } from "../cost-text";
import { parcelBill } from "../parcel-bill";
import styles from "./parcels.module.css";

/** What the parcel took, line by line, with what each cost. */
export function BillTable({ parcel, shop }: { readonly parcel: ParcelDetail; readonly shop: Shop }) {
  const bill = parcelBill(parcel);
  if (bill.length === 0) return <p>No material of it stands in the ledger.</p>;
  return (
    <div className={styles.wide}>
      <table className={classList(styles.list, styles.bill)}>
        <caption className={styles.caption}>Bill of materials</caption>
        <thead>
          <tr>
            <th scope="col">Supply</th>
            <th scope="col">Step</th>
            <th scope="col" className={styles.figure}>
              Amount
            </th>
            <th scope="col" className={styles.figure}>
              Cost
            </th>
          </tr>
        </thead>
        <tbody>
          {bill.map((movement) => (
            <tr key={movement.id}>
              <th scope="row">{movement.supplyName}</th>
              <td className={styles.step}>{movement.stepWords ?? movement.words ?? ""}</td>
              <td className={styles.figure}>{usedText(movement)}</td>
              <td className={styles.figure}>
                {movement.value === null ? "not known" : costText(costValue(-movement.value), shop)}
              </td>
            </tr>
          ))}
        </tbody>
        {parcel.costValue === null || parcel.voidedAt !== null ? null : (
          <tfoot>
            <tr>
              <th scope="row" colSpan={3}>
                Together
              </th>
              <td className={styles.figure}>{costText(costValue(parcel.costValue), shop)}</td>
            </tr>
          </tfoot>
        )}
      </table>
    </div>
  );
}

/** The amount as it left stock, and what was typed where that was another unit. */
function usedText(movement: ParcelMovement): string {
  const unit = isUseUnit(movement.useUnit) ? movement.useUnit : "each";
  const used = formatAmount(amount(-movement.amount), unit);
  const typed = `${movement.typedValue ?? ""} ${movement.typedUnit ?? ""}`.trim();
  const isSame =
    typed === "" || isUseUnit(movement.typedUnit ?? "") || used.endsWith(movement.typedUnit ?? "");
  return isSame ? used : `${used} (typed ${typed})`;
}
