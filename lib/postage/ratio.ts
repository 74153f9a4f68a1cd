import type { Ratio } from "#lib/units/number-text";

/** Digits behind the point of a number that is shown. */
const SHOWN_DIGITS = 3;

/**
 * An exact fraction; postage is compared at its limits, where a float would be a little off.
 *
 * @param numerator whole number
 * @param denominator whole number above zero
 * @throws RangeError if the denominator is not above zero
 * @example ratio(3n, 4n)
 */
export function ratio(numerator: bigint, denominator = 1n): Ratio {
  if (denominator <= 0n) throw new RangeError(`ratio requires a denominator above 0, got ${denominator}`);
  return { numerator, denominator };
}

/**
 * Sum of exact fractions.
 *
 * @param parts any number of them; none sum to 0
 * @example ratioSum(ratio(1n, 2n), ratio(1n, 4n)) // 6/8
 */
export function ratioSum(...parts: readonly Ratio[]): Ratio {
  return parts.reduce(
    (sum, part) =>
      ratio(
        sum.numerator * part.denominator + part.numerator * sum.denominator,
        sum.denominator * part.denominator,
      ),
    ratio(0n),
  );
}

/**
 * Product of exact fractions.
 *
 * @param parts any number of them; none multiply to 1
 * @example ratioProduct(ratio(3n, 2n), ratio(2n)) // 6/2
 */
export function ratioProduct(...parts: readonly Ratio[]): Ratio {
  return parts.reduce(
    (product, part) => ratio(product.numerator * part.numerator, product.denominator * part.denominator),
    ratio(1n),
  );
}

/**
 * One exact fraction divided by another.
 *
 * @param value what is divided
 * @param by above zero
 * @throws RangeError if `by` is not above zero
 * @example ratioQuotient(ratio(12000n), ratio(139n)) // 12000/139
 */
export function ratioQuotient(value: Ratio, by: Ratio): Ratio {
  return ratio(value.numerator * by.denominator, value.denominator * by.numerator);
}

/**
 * Which of two exact fractions is greater; sorts them when handed to `toSorted`.
 *
 * @param a one of them
 * @param b the other
 * @returns -1 when a is less, 0 when they are equal, 1 when a is more
 * @example compareRatios(ratio(15999n, 1000n), ratio(16n)) // -1
 */
export function compareRatios(a: Ratio, b: Ratio): -1 | 0 | 1 {
  const difference = a.numerator * b.denominator - b.numerator * a.denominator;
  if (difference === 0n) return 0;
  return difference > 0n ? 1 : -1;
}

/**
 * The float nearest to an exact fraction, or next to it; for chances and for showing, never for a limit.
 *
 * @param value the fraction
 * @example ratioNumber(ratio(1n, 4n)) // 0.25
 */
export function ratioNumber(value: Ratio): number {
  return Number(value.numerator) / Number(value.denominator);
}

/**
 * An exact fraction in figures.
 *
 * @param value the fraction
 * @returns to three digits behind the point, with "about" before it where that is not all of it
 * @example ratioText(ratio(12000n, 139n)) // "about 86.331"
 */
export function ratioText(value: Ratio): string {
  const text = ratioNumber(value).toLocaleString("en-US", { maximumFractionDigits: SHOWN_DIGITS });
  const scale = 10n ** BigInt(SHOWN_DIGITS);
  return (value.numerator * scale) % value.denominator === 0n ? text : `about ${text}`;
}
