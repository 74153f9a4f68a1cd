import type { Ratio } from "#lib/units/number-text";

/**
 * An exact number as text that is read back as the same fraction: decimal where its denominator is a power of ten.
 *
 * @param value from zero
 * @example exactNumber(ratio(785n, 1000n)) // "0.785"
 * @example exactNumber(ratio(1n, 4n)) // "1/4"
 */
export function exactNumber({ numerator, denominator }: Ratio): string {
  if (denominator === 1n) return String(numerator);
  const zeros = /^10+$/.test(String(denominator)) ? String(denominator).length - 1 : 0;
  if (zeros === 0) return `${numerator}/${denominator}`;
  const digits = String(numerator).padStart(zeros + 1, "0");
  return `${digits.slice(0, -zeros)}.${digits.slice(-zeros)}`;
}
