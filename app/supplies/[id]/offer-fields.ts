import { type MinorUnits, minorUnits } from "#lib/units/money";
import type { Shop } from "#prisma/records/shop";
import type { Offer, Supplier } from "#prisma/records/suppliers";
import type { FormField } from "../../_parts/form-field";

/**
 * The fields of an offer: empty for a new one.
 *
 * @param suppliers whom to choose from
 * @param shop for its currency
 * @param offer the offer to change, or null
 * @returns the fields in order
 */
export function offerFields(suppliers: readonly Supplier[], shop: Shop, offer: Offer | null): FormField[] {
  const typed = (minor: number) => moneyAsTyped(minorUnits(minor), shop.minorDigits);
  const breaks = (offer?.breaks ?? [])
    .map((step) => `${step.fromPacks}: ${typed(step.priceMinor)}`)
    .join(", ");
  const fields: FormField[] = [
    {
      name: "supplierId",
      label: "Supplier",
      kind: "choice",
      value: offer?.supplierId,
      choices: suppliers.map((supplier) => ({ value: supplier.id, words: supplier.name })),
    },
    {
      name: "pack",
      label: "One pack is",
      kind: "text",
      value: offer?.pack,
      hint: "roll of 188 ft, bundle of 25",
      required: true,
    },
    {
      name: "packAmount",
      label: "What is in a pack",
      kind: "number",
      value: offer?.packTyped,
      hint: "188 ft or 500",
      required: true,
    },
    {
      name: "price",
      label: `Price of a pack, ${shop.currency}`,
      kind: "number",
      value: offer?.priceMinor == null ? "" : typed(offer.priceMinor),
      hint: "may stay empty",
    },
    {
      name: "breaks",
      label: "Price breaks",
      kind: "text",
      value: breaks,
      hint: "from packs: price of each, like 3: 36.00, 6: 34.00",
    },
    {
      name: "breakKind",
      label: "A lower price counts for",
      kind: "choice",
      value: offer?.breakKind ?? "all-units",
      choices: [
        { value: "all-units", words: "all packs" },
        { value: "incremental", words: "the packs from there on" },
      ],
    },
    {
      name: "volume",
      label: "Room of one pack",
      kind: "text",
      value: offer?.volumeTyped ?? "",
      hint: "1.9 cu ft, 25 l or 40 x 40 x 30 cm; may stay empty",
    },
    {
      name: "mostPacks",
      label: "Packs a month at most",
      kind: "number",
      value: offer?.mostPacksAMonth == null ? "" : String(offer.mostPacksAMonth),
      hint: "where the supplier limits it; may stay empty",
    },
    {
      name: "soldOut",
      label: "Sold out at the supplier now",
      kind: "tick",
      value: offer?.soldOut === true ? "yes" : "",
    },
  ];
  if (offer === null) return fields;
  return [
    { name: "offerId", label: "", kind: "hidden", value: offer.id },
    ...fields,
    { name: "retired", label: "No longer on offer", kind: "tick" },
  ];
}

/** Money as a person would type it. */
export function moneyAsTyped(minor: MinorUnits, minorDigits: number): string {
  return (minor / 10 ** minorDigits).toFixed(minorDigits);
}
