import type { PurchaseOrder } from "#prisma/records/purchase-orders";
import { RecordForm } from "../../../_parts/record-form";
import { Section } from "../../../_parts/section";
import styles from "../../_parts/buying.module.css";
import { cancelOneLine, cancelWholeOrder } from "../../order-actions";

/** The ways to cancel what is still on order: one line, or all of it. */
export function OrderCancel({ order }: { readonly order: PurchaseOrder }) {
  const open = order.lines.filter((line) => line.open !== null);
  if (open.length === 0) return null;
  return (
    <Section
      title="It does not come after all"
      aside="What already came stays in stock. A cancelled line can’t be taken up again: order it anew."
    >
      <details className={styles.details}>
        <summary>Cancel what is still on order</summary>
        {open.length === 1
          ? null
          : open.map((line) => (
              <RecordForm
                key={line.id}
                action={cancelOneLine.bind(null, line.open?.lineId ?? line.id)}
                label={`Cancel ${line.supply}`}
                fields={[]}
                submit={`Cancel ${line.supply}`}
                tone="plain"
              />
            ))}
        <RecordForm
          action={cancelWholeOrder.bind(null, order.id)}
          label="Cancel the order"
          fields={[]}
          submit={open.length === 1 ? `Cancel ${open[0]?.supply ?? "it"}` : "Cancel all of it"}
        />
      </details>
    </Section>
  );
}
