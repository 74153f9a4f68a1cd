import type { Shop } from "#prisma/records/shop";
import type { Supplier } from "#prisma/records/suppliers";
import type { FormField } from "../_parts/form-field";
import { closuresAsTyped, monthDayWords } from "./supplier-days";

const WEEKDAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];
const EVERY_DAY = WEEKDAYS.map((_, index) => String(index + 1));

/** A supplier with the days on which it is closed. */
export type SupplierWithDays = Supplier & {
  readonly closures: readonly { readonly fromDay: string; readonly toDay: string }[];
};

/**
 * The fields of a supplier: empty for a new one, which is asked only what every order needs.
 *
 * @param shop for its currency
 * @param supplier the supplier to change, or null
 * @param suppliesWithoutOffer how many supplies nobody sells yet
 * @returns the fields in order
 */
export function supplierFields(
  shop: Shop,
  supplier: SupplierWithDays | null,
  suppliesWithoutOffer: number,
): FormField[] {
  const fields: FormField[] = [
    { name: "name", label: "Supplier", kind: "text", value: supplier?.name, required: true },
    {
      name: "leadTimeDays",
      label: "Days from order to delivery",
      kind: "number",
      value: supplier === null ? "" : String(supplier.leadTimeDays),
      hint: "as it usually is",
      required: true,
    },
    {
      name: "workingDays",
      label: "These are working days, Monday to Friday",
      kind: "tick",
      value: supplier?.workingDays === true ? "yes" : "",
    },
    ...chargeFields(shop, supplier),
  ];
  if (supplier !== null) return [...fields, ...dayFields(supplier), ...lastFields(supplier)];
  return [
    ...fields,
    { name: "orderDays", label: "", kind: "hidden", value: EVERY_DAY.join("\n") },
    ...sellsAllField(suppliesWithoutOffer),
  ];
}

function chargeFields(shop: Shop, supplier: Supplier | null): FormField[] {
  const money = (minor: number | null | undefined) =>
    minor == null ? "" : (minor / 10 ** shop.minorDigits).toFixed(shop.minorDigits);
  return [
    {
      name: "delivery",
      label: `Delivery, ${shop.currency}`,
      kind: "number",
      value: supplier?.deliveryMinor === 0 ? "" : money(supplier?.deliveryMinor),
      hint: "empty: none",
    },
    {
      name: "freeDelivery",
      label: "Free from",
      kind: "number",
      value: money(supplier?.freeDeliveryMinor),
      hint: "empty: never",
    },
    {
      name: "leastOrder",
      label: "Least order",
      kind: "number",
      value: money(supplier?.leastOrderMinor),
      hint: "goods that an order must come to; empty: none",
    },
  ];
}

function dayFields(supplier: SupplierWithDays): FormField[] {
  return [
    {
      name: "orderDays",
      label: "It takes orders on",
      kind: "ticks",
      value: [...supplier.orderDays].join("\n"),
      choices: WEEKDAYS.map((words, index) => ({ value: String(index + 1), words })),
    },
    {
      name: "cutOff",
      label: "Orders count that day until",
      kind: "number",
      value: supplier.cutOff ?? "",
      hint: "a time like 14:00; later ones count from the next day. Empty: all day",
    },
    {
      name: "closures",
      label: "Closed: it neither packs nor sends",
      kind: "lines",
      value: closuresAsTyped(supplier.closures),
      hint: "a span in each line: 2026-12-24 to 2027-01-02",
    },
    {
      name: "peakFrom",
      label: "Busy season from",
      kind: "number",
      value: supplier.peakFrom === null ? "" : monthDayWords(supplier.peakFrom),
      hint: "1 Sep, each year; empty: none",
    },
    {
      name: "peakTo",
      label: "Busy season until",
      kind: "number",
      value: supplier.peakTo === null ? "" : monthDayWords(supplier.peakTo),
      hint: "20 Dec",
    },
    {
      name: "peakExtraDays",
      label: "Days longer then",
      kind: "number",
      value: supplier.peakFrom === null ? "" : String(supplier.peakExtraDays),
    },
  ];
}

function lastFields(supplier: Supplier): FormField[] {
  return [
    { name: "note", label: "Note", kind: "text", value: supplier.note ?? "" },
    { name: "retired", label: "No longer used", kind: "tick" },
  ];
}

function sellsAllField(suppliesWithoutOffer: number): FormField[] {
  if (suppliesWithoutOffer === 0) return [];
  return [
    {
      name: "sellsAll",
      label: `Sells the ${suppliesWithoutOffer} supplies that have no offer yet`,
      kind: "tick",
      value: "yes",
      hint: "in the pack that each is counted in, without a price; change both on the supply’s own page",
    },
  ];
}
