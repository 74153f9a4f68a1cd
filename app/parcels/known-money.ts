import { formatMoney } from "#lib/units/money";

/**
 * Money that may leave out what is not known: "$2.31", "at least $1.80", "not known".
 *
 * @param minor what is known of it, minor units
 * @param isWhole whether nothing is left out
 * @param shop currency and its digits after the point
 */
export function knownMoney(
  minor: number,
  isWhole: boolean,
  shop: { readonly currency: string; readonly minorDigits: number },
): string {
  if (isWhole) return formatMoney(minor, shop.currency, shop.minorDigits);
  return minor === 0 ? "not known" : `at least ${formatMoney(minor, shop.currency, shop.minorDigits)}`;
}
