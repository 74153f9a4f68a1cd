import { formatMoney } from "#lib/units/money";
import type { PurchaseOrder } from "#prisma/records/purchase-orders";
import type { Shop } from "#prisma/records/shop";
import type { Offer } from "#prisma/records/suppliers";
import type { FormField } from "../_parts/form-field";

/**
 * The fields of a draft: packs of each offer of its supplier, what is in it already first, then delivery and a note.
 *
 * @param order the draft
 * @param offers of its supplier
 * @param names of supplies by id
 * @param shop for its currency
 * @returns the fields in order
 */
export function draftFields(
  order: PurchaseOrder,
  offers: readonly Offer[],
  names: ReadonlyMap<string, string>,
  shop: Shop,
): FormField[] {
  const packsOf = (offer: Offer) => order.lines.find((line) => line.offerId === offer.id)?.packs ?? 0;
  const money = (minor: number) => formatMoney(minor, shop.currency, shop.minorDigits);
  const sorted = offers.toSorted((a, b) => Math.sign(packsOf(b)) - Math.sign(packsOf(a)));
  return [
    ...sorted.map(
      (offer): FormField => ({
        name: `packs:${offer.id}`,
        label: `${names.get(offer.supplyId) ?? offer.supplyId}, ${offer.pack}`,
        kind: "number",
        value: packsOf(offer) === 0 ? "" : String(packsOf(offer)),
        hint: offer.priceMinor === null ? "packs; no price known" : `packs at ${priceWords(offer, money)}`,
      }),
    ),
    {
      name: "delivery",
      label: `Delivery as expected, ${shop.currency}`,
      kind: "number",
      value:
        order.deliveryMinor === null
          ? ""
          : (order.deliveryMinor / 10 ** shop.minorDigits).toFixed(shop.minorDigits),
      hint: "empty: not known",
    },
    { name: "note", label: "Note", kind: "text", value: order.note ?? "" },
  ];
}

function priceWords(offer: Offer, money: (minor: number) => string): string {
  const steps = offer.breaks.map((step) => `from ${step.fromPacks} ${money(step.priceMinor)}`);
  return [offer.priceMinor === null ? "" : money(offer.priceMinor), ...steps].join(", ");
}
