import { FRACTION_SIGNS } from "#lib/units/number-text";

/** Shown as fractions because they are cut and torn on a bench; fifths and sixths are not. */
const BENCH_DENOMINATORS: readonly number[] = [2, 3, 4, 8];

/**
 * A quantity as a whole number and a fraction sign, where it is exactly that.
 *
 * @param value - whole number of parts, zero or more
 * @param parts - parts in one
 * @returns "1⅓", "½", "7", or null where the rest is no half, third, quarter or eighth
 * @example fractionText(16000, 12000) // "1⅓"
 */
export function fractionText(value: number, parts: number): string | null {
  const whole = Math.floor(value / parts);
  const rest = value - whole * parts;
  if (rest === 0) return String(whole);
  const found = FRACTION_SIGNS.find(
    ([, numerator, denominator]) =>
      BENCH_DENOMINATORS.includes(denominator) && rest * denominator === numerator * parts,
  );
  if (found === undefined) return null;
  return whole === 0 ? found[0] : `${whole}${found[0]}`;
}
