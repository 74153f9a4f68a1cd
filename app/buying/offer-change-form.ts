import { amountAsTyped } from "#lib/units/amount-text";
import { formatMoney } from "#lib/units/money";
import type { OfferChange, WantedChange } from "#prisma/records/offer-changes";
import type { Shop } from "#prisma/records/shop";
import type { FormField } from "../_parts/form-field";

/**
 * The ticks that change offers to what really came, all of them set.
 *
 * @param changes where deliveries differ from their offers
 * @param shop for its currency
 * @returns a tick for each price and each pack
 */
export function offerChangeFields(changes: readonly OfferChange[], shop: Shop): FormField[] {
  const money = (minor: number) => formatMoney(minor, shop.currency, shop.minorDigits);
  return changes.flatMap(({ offer, supply, unit, difference }) => {
    const { price, pack } = difference;
    const fields: FormField[] = [];
    if (price !== null) {
      const from = price.from === null ? "not known" : money(price.from);
      const step = price.fromPacks === null ? "" : ` from ${price.fromPacks} packs on`;
      const label = `${supply}, ${offer.pack}: price${step} ${money(price.to)} instead of ${from}`;
      fields.push({ name: `price:${offer.id}`, label, kind: "tick", value: "yes" });
    }
    if (pack !== null) {
      const label = `${supply}: ${amountAsTyped(pack.to, unit)} in a pack instead of ${amountAsTyped(pack.from, unit)}`;
      fields.push({ name: `pack:${offer.id}`, label, kind: "tick", value: "yes" });
    }
    return fields;
  });
}

/**
 * Which parts of which offers are ticked.
 *
 * @param typed the fields by name, as sent
 * @returns a change for each offer with a tick
 */
export function offerChangesOf(typed: Readonly<Record<string, string>>): WantedChange[] {
  const ids = Object.keys(typed).flatMap((name) => /^(?:price|pack):(.+)$/.exec(name)?.[1] ?? []);
  return [...new Set(ids)].map((offerId) => ({
    offerId,
    price: typed[`price:${offerId}`] === "yes",
    pack: typed[`pack:${offerId}`] === "yes",
  }));
}
