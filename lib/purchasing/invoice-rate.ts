import { minorDigitsOf } from "#lib/units/minor-digits";

/** Smallest units of the shop's currency for one smallest unit of the invoice's, as an exact fraction. */
export type InvoiceRate = { readonly numerator: bigint; readonly denominator: bigint };

/** A currency and the digits after its point. */
export type ShopMoney = { readonly currency: string; readonly minorDigits: number };

const MILLION = 1_000_000n;

/**
 * Digits after the point in which the prices of an invoice are kept: the shop's own digits in its currency, else those
 * of the invoice's.
 *
 * @param currency of the invoice, ISO 4217
 * @param shop its currency and digits
 * @returns digits
 * @example invoiceDigits("JPY", { currency: "USD", minorDigits: 2 }) // 0
 */
export function invoiceDigits(currency: string, shop: ShopMoney): number {
  return currency === shop.currency ? shop.minorDigits : minorDigitsOf(currency);
}

/**
 * The rate of an invoice between smallest units: a yen has no smaller one, a dollar has a hundred.
 * Formula: rate × 10^(digits of the shop) / 10^(digits of the invoice).
 *
 * @param invoice its currency, and what one of it is in the shop's, in millionths
 * @param shop its currency and digits
 * @returns the fraction
 * @throws RangeError if a code is not three letters or a rate is not a whole number
 * @example invoiceRate({ currency: "JPY", rateMillionths: 6_700 }, { currency: "USD", minorDigits: 2 })
 * // 0.67 cents a yen: { numerator: 670_000n, denominator: 1_000_000n }
 */
export function invoiceRate(
  invoice: { readonly currency: string; readonly rateMillionths: number },
  shop: ShopMoney,
): InvoiceRate {
  return {
    numerator: BigInt(invoice.rateMillionths) * 10n ** BigInt(shop.minorDigits),
    denominator: MILLION * 10n ** BigInt(invoiceDigits(invoice.currency, shop)),
  };
}
