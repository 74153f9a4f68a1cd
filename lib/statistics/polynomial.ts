/**
 * Value of a polynomial, by Horner's rule.
 *
 * @param coefficients of the powers, highest power first; none give 0
 * @param at where the polynomial is taken
 * @returns the value
 * @see W. G. Horner (1819), Philosophical Transactions of the Royal Society 109 (from memory)
 * @example polynomial([2, 0, 1], 3) // 19
 */
export function polynomial(coefficients: readonly number[], at: number): number {
  let value = 0;
  for (const coefficient of coefficients) value = value * at + coefficient;
  return value;
}
