import type { Shop } from "#prisma/records/shop";
import type { Supplier } from "#prisma/records/suppliers";
import type { FormField } from "../_parts/form-field";

/**
 * The fields of a supplier: empty for a new one.
 *
 * @param shop for its currency
 * @param supplier the supplier to change, or null
 * @param suppliesWithoutOffer how many supplies nobody sells yet
 * @returns the fields in order
 */
export function supplierFields(
  shop: Shop,
  supplier: Supplier | null,
  suppliesWithoutOffer: number,
): FormField[] {
  const money = (minor: number) => (minor / 10 ** shop.minorDigits).toFixed(shop.minorDigits);
  const free = supplier?.freeDeliveryMinor ?? null;
  const fields: FormField[] = [
    { name: "name", label: "Supplier", kind: "text", value: supplier?.name, required: true },
    {
      name: "leadTimeDays",
      label: "Days from order to delivery",
      kind: "number",
      value: supplier === null ? "" : String(supplier.leadTimeDays),
      hint: "in calendar days, as it usually is",
      required: true,
    },
    {
      name: "delivery",
      label: `Delivery, ${shop.currency}`,
      kind: "number",
      value: supplier === null || supplier.deliveryMinor === 0 ? "" : money(supplier.deliveryMinor),
      hint: "empty: none",
    },
    {
      name: "freeDelivery",
      label: "Free from",
      kind: "number",
      value: free === null ? "" : money(free),
      hint: "empty: never",
    },
  ];
  if (supplier !== null) {
    return [
      ...fields,
      { name: "note", label: "Note", kind: "text", value: supplier.note ?? "" },
      { name: "retired", label: "No longer used", kind: "tick" },
    ];
  }
  if (suppliesWithoutOffer === 0) return fields;
  return [
    ...fields,
    {
      name: "sellsAll",
      label: `Sells the ${suppliesWithoutOffer} supplies that have no offer yet`,
      kind: "tick",
      value: "yes",
      hint: "in the pack that each is counted in, without a price; change both on the supply’s own page",
    },
  ];
}
