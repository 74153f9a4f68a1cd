import { formatAmount } from "#lib/units/amount-text";
import { formatDay } from "#lib/units/day-text";
import { instant, shopDay } from "#lib/units/instant";
import { isUseUnit } from "#lib/units/use-unit";
import type { ParcelDetail, ParcelMovement } from "#prisma/records/parcel-lists";
import type { Shop } from "#prisma/records/shop";
import { classList } from "../../_parts/class-list";
import styles from "./parcels.module.css";

/** All movements of a parcel, reversals among them. */
export function ParcelTrace({ parcel, shop }: { readonly parcel: ParcelDetail; readonly shop: Shop }) {
  return (
    <div className={styles.wide}>
      <table className={classList(styles.list, styles.trace)}>
        <caption className={styles.caption}>Movements of this parcel</caption>
        <thead>
          <tr>
            <th scope="col">Recorded</th>
            <th scope="col">Took effect</th>
            <th scope="col">Supply</th>
            <th scope="col" className={styles.figure}>
              In or out
            </th>
            <th scope="col">Why</th>
            <th scope="col">From</th>
          </tr>
        </thead>
        <tbody>
          {parcel.movements.map((movement) => (
            <tr key={movement.id}>
              <td>{dayText(movement.recordedAt, shop)}</td>
              <td>{dayText(movement.effectiveAt, shop)}</td>
              <th scope="row">{movement.supplyName}</th>
              <td className={styles.figure}>{signedText(movement)}</td>
              <td>{whyText(movement)}</td>
              <td>{movement.recordedBy}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function dayText(text: string, shop: Shop): string {
  return formatDay(shopDay(instant(text), shop.timeZone));
}

function signedText(movement: ParcelMovement): string {
  const unit = isUseUnit(movement.useUnit) ? movement.useUnit : "each";
  return `${movement.amount > 0 ? "+" : ""}${formatAmount(movement.amount, unit)}`;
}

function whyText(movement: ParcelMovement): string {
  if (movement.reversesId !== null) return `takes line ${movement.reversesId} back${withReason(movement)}`;
  const state = movement.reversed ? ", taken back later" : "";
  return `line ${movement.id}: ${movement.cause.replace("-", " ")}${state}`;
}

function withReason(movement: ParcelMovement): string {
  return movement.words === null || movement.words === "" ? "" : `: ${movement.words}`;
}
