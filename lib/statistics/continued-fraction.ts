const TINY = 1e-300;
const CLOSE = 3e-16;
const MOST_TERMS = 1_000_000;

/**
 * Value of the continued fraction first + a(1) / (b(1) + a(2) / (b(2) + ...)), by the modified method of
 * Lentz.
 *
 * @param first what stands before the first fraction line
 * @param top a(n), for n from 1
 * @param bottom b(n), for n from 1
 * @returns the value
 * @throws RangeError when it does not settle in a million terms
 * @see W. J. Lentz (1976) with the change of Thompson and Barnett (1986), as in Numerical Recipes 5.2 (from
 * memory)
 * @example continuedFraction(1, () => 1, () => 1) // 1.618033988749895, the golden ratio
 */
export function continuedFraction(
  first: number,
  top: (n: number) => number,
  bottom: (n: number) => number,
): number {
  let value = awayFromNothing(first);
  let c = value;
  let d = 0;
  for (let n = 1; n <= MOST_TERMS; n += 1) {
    const a = top(n);
    const b = bottom(n);
    d = 1 / awayFromNothing(b + a * d);
    c = awayFromNothing(b + a / c);
    const factor = c * d;
    value *= factor;
    if (Math.abs(factor - 1) <= CLOSE) return value;
  }
  throw new RangeError(`continuedFraction requires a fraction that settles, got none in ${MOST_TERMS} terms`);
}

function awayFromNothing(value: number): number {
  return Math.abs(value) < TINY ? TINY : value;
}
