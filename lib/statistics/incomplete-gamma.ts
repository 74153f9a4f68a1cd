import { continuedFraction } from "#lib/statistics/continued-fraction";
import { poissonWeight } from "#lib/statistics/poisson-weight";
import type { Tails } from "#lib/statistics/tails";

const CLOSE = 1e-17;

/**
 * Regularised incomplete gamma functions P (lower) and Q (upper). Below shape + 1 the series of P, from
 * there on the continued fraction of Q; the other is the rest to 1.
 *
 * @param shape above 0
 * @param x from 0
 * @returns P(shape, x) and Q(shape, x)
 * @throws RangeError when the shape is not above 0, x below 0, or one of them not finite
 * @see Digital Library of Mathematical Functions 8.11.4 (series) and 8.9.2 (continued fraction) (from
 * memory; the values are checked in the tests)
 * @example incompleteGamma(1, 2).upper // 0.1353352832366127, which is e^-2
 */
export function incompleteGamma(shape: number, x: number): Tails {
  if (!(shape > 0 && x >= 0 && Number.isFinite(shape) && Number.isFinite(x))) {
    throw new RangeError(`incompleteGamma requires a shape above 0 and x from 0, got ${shape} and ${x}`);
  }
  if (x === 0) return { lower: 0, upper: 1 };
  const weight = poissonWeight(shape, x);
  if (x < shape + 1) {
    const lower = Math.min(1, weight * series(shape, x));
    return { lower, upper: 1 - lower };
  }
  const fraction = continuedFraction(
    x + 1 - shape,
    (n) => n * (shape - n),
    (n) => x + 1 - shape + 2 * n,
  );
  const upper = Math.min(1, (shape * weight) / fraction);
  return { lower: 1 - upper, upper };
}

/** 1 + x / (shape + 1) + x^2 / ((shape + 1)(shape + 2)) + ... */
function series(shape: number, x: number): number {
  let sum = 1;
  let term = 1;
  for (let n = 1; term > CLOSE * sum; n += 1) {
    term *= x / (shape + n);
    sum += term;
  }
  return sum;
}
