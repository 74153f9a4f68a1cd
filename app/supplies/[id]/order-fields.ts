import type { Day } from "#lib/units/day";
import type { Offer, Supplier } from "#prisma/records/suppliers";
import type { FormField } from "../../_parts/form-field";

/**
 * The fields of an order that was placed with a supplier.
 *
 * @param offers what can be ordered
 * @param suppliers for their names and lead times
 * @param today the shop's day
 * @param key the order's own key, so that sending twice orders once
 * @returns the fields in order
 */
export function orderFields(
  offers: readonly Offer[],
  suppliers: readonly Supplier[],
  today: Day,
  key: string,
): FormField[] {
  const nameOf = (offer: Offer) => suppliers.find((supplier) => supplier.id === offer.supplierId)?.name ?? "";
  return [
    { name: "id", label: "", kind: "hidden", value: key },
    {
      name: "offerId",
      label: "Offer",
      kind: "choice",
      choices: offers.map((offer) => ({ value: offer.id, words: `${offer.pack}, ${nameOf(offer)}` })),
    },
    { name: "packs", label: "Packs", kind: "number", value: "1", required: true },
    { name: "placedOn", label: "Ordered on", kind: "day", value: today, required: true },
    {
      name: "expectedOn",
      label: "Should come on",
      kind: "day",
      hint: "left empty: as the supplier’s terms promise",
    },
    { name: "note", label: "Note", kind: "text" },
  ];
}
