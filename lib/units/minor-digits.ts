/**
 * Digits after the point of a currency: 2 for most, 0 for some.
 *
 * @param currency ISO 4217 code
 * @returns digits of its smallest unit
 * @throws RangeError if the code is not three letters
 * @see ISO 4217, list one, as the platform knows it
 * @example minorDigitsOf("JPY") // 0
 */
export function minorDigitsOf(currency: string): number {
  const options = new Intl.NumberFormat("en", { style: "currency", currency }).resolvedOptions();
  return options.maximumFractionDigits ?? 2;
}
