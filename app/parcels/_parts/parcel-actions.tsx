import Link from "next/link";
import { formatAmount } from "#lib/units/amount-text";
import { isUseUnit } from "#lib/units/use-unit";
import type { ParcelDetail } from "#prisma/records/parcel-lists";
import type { FormField } from "../../_parts/form-field";
import { RecordForm } from "../../_parts/record-form";
import { brokenAction, postedAction, returnedAction, voidAction } from "../actions";
import { BROKEN_CAUSES } from "../broken-causes";
import { parcelBill } from "../parcel-bill";
import { BACK_FIELD } from "../returned-lines";
import { stillOut } from "../still-out";
import styles from "./parcels.module.css";

type ParcelActionsProps = { readonly parcel: ParcelDetail; readonly today: string };

/** What may have become of a parcel: posted, broken, come back, never sent. Each opens its few questions. */
export function ParcelActions({ parcel, today }: ParcelActionsProps) {
  const key: FormField = { name: "parcelId", label: "", kind: "hidden", value: parcel.id };
  const on: FormField = { name: "on", label: "Day", kind: "day", value: today, required: true };
  const cartons = new Set(parcel.cartons.map((carton) => carton.supplyId));
  const out = stillOut(parcel.movements);
  const back = parcelBill(parcel).flatMap(
    ({ supplyId: id, supplyName, useUnit }, index, bill): FormField[] => {
      const left = out.get(id);
      if (left === undefined || bill.findIndex((line) => line.supplyId === id) !== index) return [];
      const took = `of ${formatAmount(left, isUseUnit(useUnit) ? useUnit : "each")}`;
      const hint = cartons.has(id) ? `${took}; only a carton that can be used again` : took;
      return [{ name: `${BACK_FIELD}${id}`, label: supplyName, kind: "number", hint }];
    },
  );
  return (
    <div className={styles.actions}>
      {parcel.postedOn === null ? (
        <details>
          <summary>It was posted</summary>
          <RecordForm action={postedAction} fields={[key, on]} submit="Mark as posted" label="Posted" />
        </details>
      ) : null}
      <details>
        <summary>It arrived broken</summary>
        <p>
          Marked as broken, the parcel stays linked to the recipe it was packed by.{" "}
          {parcel.pieces.map((piece) => (
            <Link key={piece.itemTypeId} href={`/recipes/${encodeURIComponent(piece.itemTypeId)}`}>
              Look at the recipe of {piece.name}
            </Link>
          ))}
        </p>
        <RecordForm
          action={brokenAction}
          fields={[
            key,
            on,
            { name: "cause", label: "What went wrong", kind: "choice", choices: BROKEN_CAUSES },
            { name: "note", label: "What broke", kind: "lines", required: true },
          ]}
          submit="Mark as broken"
          label="Broken"
        />
      </details>
      <details>
        <summary>It came back</summary>
        <p>
          Postage stays spent. What can be used again goes back on the shelf as saved stock: fill in only
          that.
        </p>
        <RecordForm
          action={returnedAction}
          fields={[key, on, ...back]}
          submit="Note the return"
          label="Returned"
        />
      </details>
      <details>
        <summary>It was never packed</summary>
        <p>Void takes its materials back into stock. The parcel stays in the list, struck through.</p>
        <RecordForm
          action={voidAction}
          fields={[key, { name: "reason", label: "Why", kind: "text", required: true }]}
          submit="Void this parcel"
          label="Void"
        />
      </details>
    </div>
  );
}
