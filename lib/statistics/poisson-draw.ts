import type { Random } from "#lib/statistics/normal-draw";

/** A larger mean is drawn in parts: e^-mean must not vanish. */
const LARGEST_PART = 30;
/** A double has no digits left beside 1 for a smaller chance. */
const NOTHING = 1e-18;

/**
 * A draw from the Poisson distribution.
 *
 * @param mean from 0
 * @param random source of chance
 * @returns a whole number from 0
 * @throws RangeError when the mean is below 0 or not finite
 * @see inversion from 0 upwards; a sum of Poisson counts is one (from memory; shares in the tests)
 * @example poissonDraw(2, random) // 3
 */
export function poissonDraw(mean: number, random: Random): number {
  if (!(mean >= 0 && Number.isFinite(mean))) {
    throw new RangeError(`poissonDraw requires a mean from 0, got ${mean}`);
  }
  const parts = Math.max(1, Math.ceil(mean / LARGEST_PART));
  let count = 0;
  for (let part = 0; part < parts; part += 1) count += smallDraw(mean / parts, random());
  return count;
}

function smallDraw(mean: number, chance: number): number {
  let weight = Math.exp(-mean);
  let left = chance;
  let count = 0;
  while (left >= weight && (count < mean || weight > NOTHING)) {
    left -= weight;
    count += 1;
    weight *= mean / count;
  }
  return count;
}
