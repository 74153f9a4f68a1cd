/** Where a sign or a code stands in a price: a code in front of a number or behind one. */
const SIGN = /([A-Za-z]{0,3})(\p{Sc})|^[A-Za-z]{3}(?=\s*\d)|(?<=\d\s*)[A-Za-z]{3}$/u;

/**
 * A sign or code of another currency that stands in a price: read as the shop's, it would be a wrong price.
 *
 * @param text a price as typed
 * @param currency ISO 4217 code of the shop
 * @returns the sign or code as typed; null where there is none, or it is the shop's own
 * @example foreignCurrency("4.60 EUR", "USD") // "EUR"
 */
export function foreignCurrency(text: string, currency: string): string | null {
  const found = SIGN.exec(text);
  if (found === null) return null;
  const [whole, letters = "", sign] = found;
  const isOwn =
    sign === undefined
      ? whole.toUpperCase() === currency
      : sign === signOf(currency) && currency.startsWith(letters.toUpperCase());
  return isOwn ? null : whole;
}

/** "$" for USD, CAD and others alike: which dollars are meant is the shop's to know. */
function signOf(currency: string): string | undefined {
  const format = new Intl.NumberFormat("en", {
    style: "currency",
    currency,
    currencyDisplay: "narrowSymbol",
  });
  return format.formatToParts(0).find(({ type }) => type === "currency")?.value;
}
