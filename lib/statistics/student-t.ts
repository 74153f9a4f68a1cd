import { incompleteBeta } from "#lib/statistics/incomplete-beta";
import { logGamma } from "#lib/statistics/log-gamma";
import type { Tails } from "#lib/statistics/tails";

/**
 * Distribution function of Student's t for any degrees of freedom: half of I(degrees / (degrees + t²); degrees / 2, 1/2)
 * lies beyond t.
 *
 * @param t without unit
 * @param degrees degrees of freedom, above 0, whole or not
 * @returns the shares at or below t and above it
 * @throws RangeError when t is not a number or the degrees are not above 0
 * @see Abramowitz and Stegun (1964), Handbook of Mathematical Functions, 26.7.1 (from memory; the values are checked
 * in the tests)
 * @example studentTTails(2.3533634348018, 3).lower // 0.95
 */
export function studentTTails(t: number, degrees: number): Tails {
  if (Number.isNaN(t) || !(degrees > 0 && Number.isFinite(degrees))) {
    throw new RangeError(`studentTTails requires a number and degrees above 0, got ${t} and ${degrees}`);
  }
  const square = t * t;
  const inside = square === Number.POSITIVE_INFINITY ? 0 : degrees / (degrees + square);
  const rest = square === Number.POSITIVE_INFINITY ? 1 : square / (degrees + square);
  const beyond = incompleteBeta(degrees / 2, 1 / 2, inside, rest).lower / 2;
  return t > 0 ? { lower: 1 - beyond, upper: beyond } : { lower: beyond, upper: 1 - beyond };
}

/**
 * Logarithm of the density of Student's t.
 *
 * @param t without unit
 * @param degrees degrees of freedom, above 0
 * @returns ln of the density
 * @throws RangeError when the degrees are not above 0
 * @see Abramowitz and Stegun (1964), Handbook of Mathematical Functions, 26.7.1 (from memory)
 * @example studentTLogDensity(0, 1) // -1.1447298858494, which is -ln pi
 */
export function studentTLogDensity(t: number, degrees: number): number {
  const half = degrees / 2;
  return (
    logGamma(half + 1 / 2) -
    logGamma(half) -
    Math.log(degrees * Math.PI) / 2 -
    (half + 1 / 2) * Math.log1p((t * t) / degrees)
  );
}
