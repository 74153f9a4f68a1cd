import { continuedFraction } from "#lib/statistics/continued-fraction";
import { deviance } from "#lib/statistics/deviance";
import { stirlingRemainder } from "#lib/statistics/log-gamma";
import type { Tails } from "#lib/statistics/tails";

const NEARLY_ALL = 0.99;

/**
 * Regularised incomplete beta function I(x; a, b) (lower) and its rest to 1 (upper), by the continued
 * fraction on the side of the mean where it settles soon.
 *
 * @param a above 0
 * @param b above 0
 * @param x 0 to 1
 * @param rest 1 - x; give it where x is close to 1 and the difference would lose its digits
 * @returns I(x; a, b) and I(1 - x; b, a)
 * @throws RangeError when a or b is not above 0 or not finite, or x or its rest is not within 0 to 1
 * @see Digital Library of Mathematical Functions 8.17.4 and 8.17.22; its even part as in A. R. DiDonato and
 * A. H. Morris (1992), Algorithm 708, ACM Transactions on Mathematical Software 18 (from memory; the values
 * are checked in the tests)
 * @example incompleteBeta(2, 1, 0.5).lower // 0.25
 */
export function incompleteBeta(a: number, b: number, x: number, rest: number = 1 - x): Tails {
  if (!(a > 0 && b > 0 && Number.isFinite(a) && Number.isFinite(b))) {
    throw new RangeError(`incompleteBeta requires a and b above 0, got ${a} and ${b}`);
  }
  if (!(x >= 0 && x <= 1 && rest >= 0 && rest <= 1)) {
    throw new RangeError(`incompleteBeta requires x and its rest within 0 to 1, got ${x} and ${rest}`);
  }
  if (x === 0) return { lower: 0, upper: 1 };
  if (rest === 0) return { lower: 1, upper: 0 };
  // x below (a + 1) / (a + b + 2), written so that an x of nearly 1 keeps the digits of its rest.
  const isBelowMiddle = x * (b + 1) < rest * (a + 1);
  // Where one side all but fills the whole, the other is taken by itself: 1 - side has too few digits left.
  if (isBelowMiddle) {
    const lower = below(a, b, x, rest);
    return { lower, upper: lower > NEARLY_ALL ? below(b, a, rest, x) : 1 - lower };
  }
  const upper = below(b, a, rest, x);
  return { lower: upper > NEARLY_ALL ? below(a, b, x, rest) : 1 - upper, upper };
}

/**
 * I(x; a, b) for an x above 0 and below 1. The even part of the fraction is taken: it settles in half the terms,
 * and `lead` = a (1 - x) - b x keeps its digits however large a or b is.
 */
function below(a: number, b: number, x: number, rest: number): number {
  const lead = a * rest - b * x + 1;
  const fraction = continuedFraction(
    (a * lead) / (a + 1),
    (n) => {
      const j = a + 2 * n - 1;
      return ((a + n - 1) / j) * (((a + b + n - 1) * x) / j) * n * ((b - n) * x);
    },
    (n) => n + (n * (b - n) * x) / (a + 2 * n - 1) + ((a + n) / (a + 2 * n + 1)) * (lead + n * (1 + rest)),
  );
  return Math.min(1, ((binomialWeight(a, b, x, rest) * b) / (a + b)) * (a / fraction));
}

/**
 * Gamma(a + b + 1) / (Gamma(a + 1) Gamma(b + 1)) x^a (1 - x)^b: the binomial probability of a successes and
 * b failures, for any a and b above 0, whole or not.
 *
 * @param a above 0
 * @param b above 0
 * @param x chance of a success, above 0
 * @param rest 1 - x, above 0
 * @returns the weight
 * @throws RangeError when an argument is not above 0 or not finite
 * @see C. Loader (2000), Fast and accurate computation of binomial probabilities (from memory)
 * @example binomialWeight(1, 1, 0.5, 0.5) // 0.5
 */
export function binomialWeight(a: number, b: number, x: number, rest: number): number {
  const all = a + b;
  const remainder = stirlingRemainder(all) - stirlingRemainder(a) - stirlingRemainder(b);
  const exponent = remainder - deviance(a, all * x) - deviance(b, all * rest);
  return Math.exp(exponent) * Math.sqrt(all / Math.max(a, b) / (2 * Math.PI * Math.min(a, b)));
}
