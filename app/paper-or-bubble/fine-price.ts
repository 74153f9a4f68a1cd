import { FINER_DIGITS } from "./what-if";

const VALUE_PER_MINOR = 10_000;

/**
 * The price of a use unit in words: a sheet costs less than the smallest coins.
 *
 * @param value 1/10,000 minor unit
 * @param shop its currency
 * @returns with up to two digits more than the currency has
 * @example finePrice(252_000, { currency: "USD", minorDigits: 2 }) // "$0.252"
 */
export function finePrice(
  value: number,
  { currency, minorDigits }: { readonly currency: string; readonly minorDigits: number },
): string {
  return new Intl.NumberFormat("en-US", {
    style: "currency",
    currency,
    minimumFractionDigits: minorDigits,
    maximumFractionDigits: minorDigits + FINER_DIGITS,
  }).format(value / VALUE_PER_MINOR / 10 ** minorDigits);
}
