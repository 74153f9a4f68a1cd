import { formatMoney } from "#lib/units/money";
import type { Shop } from "#prisma/records/shop";
import type { Supplier } from "#prisma/records/suppliers";
import { RecordForm } from "../../_parts/record-form";
import { Section } from "../../_parts/section";
import { keepSupplier } from "../supplier-actions";
import { supplierFields } from "../supplier-fields";
import styles from "./setup.module.css";

type SuppliersProps = {
  readonly suppliers: readonly Supplier[];
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

function supplierWords(supplier: Supplier, shop: Shop): string {
  const money = (minor: number) => formatMoney(minor, shop.currency, shop.minorDigits);
  const days = `${supplier.leadTimeDays} ${supplier.leadTimeDays === 1 ? "day" : "days"}`;
  const delivery =
    supplier.deliveryMinor === 0 ? "no delivery charge" : `delivery ${money(supplier.deliveryMinor)}`;
  const free = supplier.freeDeliveryMinor === null ? "" : `, free from ${money(supplier.freeDeliveryMinor)}`;
  return `${days}, ${delivery}${free}`;
}
