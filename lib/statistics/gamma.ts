import { incompleteGamma } from "#lib/statistics/incomplete-gamma";
import { poissonWeight } from "#lib/statistics/poisson-weight";
import type { Tails } from "#lib/statistics/tails";

/** A gamma distribution: mean shape x scale, variance shape x scale^2. */
export type Gamma = { readonly shape: number; readonly scale: number };

/**
 * Density of the gamma distribution.
 *
 * @param x in the unit of the scale; below 0 the density is 0
 * @param gamma shape and scale, both above 0
 * @returns the density a unit; at 0 with a shape below 1 infinite
 * @throws RangeError when x is not finite, or the shape or the scale is out of range
 * @see (x / scale)^(shape - 1) e^(-x / scale) / (scale Gamma(shape)) (from memory; the values are checked in
 * the tests)
 * @example gammaDensity(2, { shape: 1, scale: 2 }) // 0.18393972058572117
 */
export function gammaDensity(x: number, gamma: Gamma): number {
  check("gammaDensity", x, gamma);
  const { shape, scale } = gamma;
  if (x < 0) return 0;
  if (x === 0) return densityAtNothing(gamma);
  if (shape >= 1) return poissonWeight(shape - 1, x / scale) / scale;
  return (shape / x) * poissonWeight(shape, x / scale);
}

/**
 * Distribution function of the gamma distribution and its complement: the share up to, and above, x.
 *
 * @param x in the unit of the scale; below 0 all lies above
 * @param gamma shape and scale, both above 0
 * @returns the two shares
 * @throws RangeError when x is not finite, or the shape or the scale is out of range
 * @see P(shape, x / scale) of the incomplete gamma function (from memory; the values are checked in the
 * tests)
 * @example gammaTails(2, { shape: 1, scale: 2 }).upper // 0.36787944117144233
 */
export function gammaTails(x: number, gamma: Gamma): Tails {
  check("gammaTails", x, gamma);
  if (x < 0) return { lower: 0, upper: 1 };
  return incompleteGamma(gamma.shape, x / gamma.scale);
}

/**
 * Expected shortage of a stock of `x` against a gamma demand, E[max(X - x, 0)].
 *
 * @param x the stock, in the unit of the scale
 * @param gamma shape and scale of the demand, both above 0
 * @returns mean demand beyond the stock, in the same unit
 * @throws RangeError when x is not finite, or the shape or the scale is out of range
 * @see (mean - x) P(X > x) + mean t^shape e^-t / Gamma(shape + 1) with t = x / scale (from memory; the values
 * are checked in the tests)
 * @example gammaExpectedShortage(2, { shape: 1, scale: 2 }) // 0.7357588823428847
 */
export function gammaExpectedShortage(x: number, gamma: Gamma): number {
  check("gammaExpectedShortage", x, gamma);
  const mean = gamma.shape * gamma.scale;
  if (x <= 0) return mean - x;
  const weight = poissonWeight(gamma.shape, x / gamma.scale);
  return Math.max(0, (mean - x) * gammaTails(x, gamma).upper + mean * weight);
}

function densityAtNothing({ shape, scale }: Gamma): number {
  if (shape < 1) return Infinity;
  return shape === 1 ? 1 / scale : 0;
}

function check(name: string, x: number, { shape, scale }: Gamma): void {
  if (!Number.isFinite(x)) throw new RangeError(`${name} requires a finite x, got ${x}`);
  if (!(shape > 0 && scale > 0 && Number.isFinite(shape) && Number.isFinite(scale))) {
    throw new RangeError(`${name} requires a shape and a scale above 0, got ${shape} and ${scale}`);
  }
}
