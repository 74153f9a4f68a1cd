import { day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import { formatMoney } from "#lib/units/money";
import type { Shop } from "#prisma/records/shop";
import { RecordForm } from "../../_parts/record-form";
import { Section } from "../../_parts/section";
import { keepSupplier } from "../supplier-actions";
import { monthDayWords } from "../supplier-days";
import { type SupplierWithDays, supplierFields } from "../supplier-fields";
import styles from "./setup.module.css";

type SuppliersProps = {
  readonly suppliers: readonly SupplierWithDays[];
  readonly shop: Shop;
  readonly suppliesWithoutOffer: number;
};

/** Who sells supplies, and how long a delivery takes. */
export function Suppliers({ suppliers, shop, suppliesWithoutOffer }: SuppliersProps) {
  return (
    <Section
      title={suppliers.length === 0 ? "Who sells to you, and how long does it take?" : "Who sells to you"}
      id="suppliers"
      aside="The lead time decides by which day an order must leave. Packs and prices stand on each supply’s own page."
    >
      <ul className={styles.list}>
        {suppliers.map((supplier) => (
          <li key={supplier.id} className={styles.row}>
            <p className={styles.main}>
              {supplier.name} <span className={styles.aside}>{supplierWords(supplier, shop)}</span>
            </p>
            <details className={styles.details}>
              <summary>Change {supplier.name}</summary>
              <RecordForm
                action={keepSupplier.bind(null, supplier.id)}
                label={supplier.name}
                fields={supplierFields(shop, supplier, 0)}
                submit="Save the supplier"
              />
            </details>
          </li>
        ))}
      </ul>
      <details className={styles.details} open={suppliers.length === 0}>
        <summary>Add a supplier</summary>
        <RecordForm
          action={keepSupplier.bind(null, null)}
          label="New supplier"
          fields={supplierFields(shop, null, suppliesWithoutOffer)}
          submit="Add the supplier"
        />
      </details>
    </Section>
  );
}

function supplierWords(supplier: SupplierWithDays, shop: Shop): string {
  const money = (minor: number) => formatMoney(minor, shop.currency, shop.minorDigits);
  const { leadTimeDays, deliveryMinor, freeDeliveryMinor, leastOrderMinor, cutOff, peakFrom, peakTo } =
    supplier;
  const sort = supplier.workingDays ? "working day" : "day";
  return [
    `${leadTimeDays} ${sort}${leadTimeDays === 1 ? "" : "s"}`,
    deliveryMinor === 0 ? "no delivery charge" : `delivery ${money(deliveryMinor)}`,
    freeDeliveryMinor === null ? "" : `free from ${money(freeDeliveryMinor)}`,
    leastOrderMinor === null ? "" : `least order ${money(leastOrderMinor)}`,
    cutOff === null ? "" : `until ${cutOff}`,
    peakFrom === null || peakTo === null
      ? ""
      : `${supplier.peakExtraDays} more from ${monthDayWords(peakFrom)} to ${monthDayWords(peakTo)}`,
    ...supplier.closures.map((span) => `closed ${closureWords(span)}`),
  ]
    .filter((part) => part !== "")
    .join(", ");
}

function closureWords({ fromDay, toDay }: SupplierWithDays["closures"][number]): string {
  const from = formatDay(day(fromDay), { year: true });
  return fromDay === toDay ? from : `${from} to ${formatDay(day(toDay), { year: true })}`;
}
