/**
 * Money in the currency's units, without its sign, as a price list has it.
 *
 * @param minor whole minor units from zero
 * @param minorDigits digits behind the point of the currency
 * @example plainMoney(460, 2) // "4.60"
 */
export function plainMoney(minor: number, minorDigits: number): string {
  if (minorDigits === 0) return String(minor);
  const digits = String(minor).padStart(minorDigits + 1, "0");
  return `${digits.slice(0, -minorDigits)}.${digits.slice(-minorDigits)}`;
}
