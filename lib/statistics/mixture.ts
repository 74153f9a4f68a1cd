import { normalCumulative } from "#lib/statistics/normal-cumulative";
import { studentTTails } from "#lib/statistics/student-t";

/** One bell of a mixture: a normal where `degrees` is null, else a Student's t. */
export type MixturePart = {
  /** share of the whole, from 0 */
  readonly weight: number;
  readonly centre: number;
  /** above 0; the standard deviation of a normal part */
  readonly scale: number;
  readonly degrees: number | null;
};

/** The quantile is found to 2^-36 of the width of the search: more is noise. */
const HALVINGS = 36;
const FAR = 4;

/**
 * Share of a mixture at or below a value.
 *
 * @param parts at least one; weights need not add up to 1
 * @param value in the unit of the centres; may be infinite
 * @returns from 0 to 1, never falling with the value
 * @throws RangeError when there is no weight
 * @example mixtureUpTo([{ weight: 1, centre: 0, scale: 1, degrees: null }], 0) // 0.5
 */
export function mixtureUpTo(parts: readonly MixturePart[], value: number): number {
  let reached = 0;
  let whole = 0;
  for (const { weight, centre, scale, degrees } of parts) {
    const z = (value - centre) / scale;
    reached += weight * (degrees === null ? normalCumulative(z) : studentTTails(z, degrees).lower);
    whole += weight;
  }
  if (!(whole > 0)) throw new RangeError(`mixtureUpTo requires a weight above 0, got ${whole}`);
  return Math.min(1, reached / whole);
}

/**
 * Quantile of a mixture: the value up to which a share lies, by halving between bounds that are widened first.
 *
 * @param parts at least one
 * @param chance between 0 and 1, both excluded
 * @returns in the unit of the centres
 * @throws RangeError when the chance is out of range or there is no weight
 * @example mixtureQuantile([{ weight: 1, centre: 5, scale: 2, degrees: null }], 0.95) // 8.289707
 */
export function mixtureQuantile(parts: readonly MixturePart[], chance: number): number {
  if (!(chance > 0 && chance < 1)) {
    throw new RangeError(`mixtureQuantile requires a chance between 0 and 1, got ${chance}`);
  }
  const bounds = (far: number): [number, number] => [
    Math.min(...parts.map(({ centre, scale }) => centre - far * scale)),
    Math.max(...parts.map(({ centre, scale }) => centre + far * scale)),
  ];
  let [low, high] = bounds(FAR);
  for (let far = FAR * FAR; mixtureUpTo(parts, low) > chance; far *= FAR) [low] = bounds(far);
  for (let far = FAR * FAR; mixtureUpTo(parts, high) < chance; far *= FAR) [, high] = bounds(far);
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (low + high) / 2;
    if (mixtureUpTo(parts, middle) < chance) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Mean and variance of a mixture; those of a t with up to two degrees of freedom, which has no variance, are refused.
 *
 * @param parts at least one
 * @returns mean, and variance in its square
 * @throws RangeError when there is no weight, or a part has no variance
 * @example mixtureMoments([{ weight: 1, centre: 5, scale: 2, degrees: 4 }]) // { mean: 5, variance: 8 }
 */
export function mixtureMoments(parts: readonly MixturePart[]): {
  readonly mean: number;
  readonly variance: number;
} {
  let [whole, first, second] = [0, 0, 0];
  for (const part of parts) {
    whole += part.weight;
    first += part.weight * part.centre;
  }
  const mean = first / whole;
  if (!(whole > 0)) throw new RangeError(`mixtureMoments requires a weight above 0, got ${whole}`);
  for (const { weight, centre, scale, degrees } of parts) {
    if (degrees !== null && degrees <= 2) {
      throw new RangeError(`mixtureMoments requires degrees above 2, got ${degrees}`);
    }
    const widened = degrees === null ? 1 : degrees / (degrees - 2);
    second += weight * ((centre - mean) ** 2 + scale * scale * widened);
  }
  return { mean, variance: second / whole };
}
