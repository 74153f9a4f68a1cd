import { type Gamma, gammaDensity, gammaTails } from "#lib/statistics/gamma";
import { logGamma } from "#lib/statistics/log-gamma";
import { normalQuantile } from "#lib/statistics/normal-quantile";
import { skewedQuantile } from "#lib/statistics/skewed-quantile";

const STEPS = 100;
const CLOSE = 1e-10;
const LONGEST_STEP = 2;

/**
 * Quantile of the gamma distribution. Newton steps in ln x on the logarithm of the smaller tail, which is
 * concave there, so that they close in from one side.
 *
 * @param probability between 0 and 1, both excluded
 * @param gamma shape and scale, both above 0
 * @returns the x up to which that share lies, in the unit of the scale; 0 where it is too small for a number
 * @throws RangeError when the probability, the shape or the scale is out of range
 * @see Newton's method; first guess by the leading term (probability Gamma(shape + 1))^(1 / shape) near 0,
 * else by the Wilson-Hilferty cube (from memory; the values are checked in the tests)
 * @example gammaQuantile(0.95, { shape: 4, scale: 2.5 }) // 19.384141319831816
 */
export function gammaQuantile(probability: number, gamma: Gamma): number {
  if (!(probability > 0 && probability < 1)) {
    throw new RangeError(`gammaQuantile requires a probability between 0 and 1, got ${probability}`);
  }
  const { shape, scale } = gamma;
  if (!(shape > 0 && scale > 0 && Number.isFinite(shape) && Number.isFinite(scale))) {
    throw new RangeError(`gammaQuantile requires a shape and a scale above 0, got ${shape} and ${scale}`);
  }
  const standard = { shape, scale: 1 };
  const isLower = probability <= 0.5;
  const wanted = isLower ? probability : 1 - probability;
  let logarithm = firstGuess(probability, shape);
  for (let step = 0; step < STEPS; step += 1) {
    const x = Math.exp(logarithm);
    if (x === 0) return 0;
    const tails = gammaTails(x, standard);
    const tail = isLower ? tails.lower : tails.upper;
    const slope = (x * gammaDensity(x, standard)) / tail;
    const wish = (Math.log(wanted / tail) / slope) * (isLower ? 1 : -1);
    const move = Math.min(LONGEST_STEP, Math.max(-LONGEST_STEP, wish));
    logarithm += move;
    if (Math.abs(move) <= CLOSE) return scale * Math.exp(logarithm);
  }
  throw new RangeError(`gammaQuantile requires a quantile that settles, got none for shape ${shape}`);
}

/** ln of the guess, for scale 1. */
function firstGuess(probability: number, shape: number): number {
  const nearNothing = (Math.log(probability) + logGamma(shape + 1)) / shape;
  // The leading term is low by e^(-x shape / (shape + 1)): good to a few in a hundred below this.
  if (nearNothing < Math.log(0.1 * (shape + 1))) return nearNothing;
  const deviation = Math.sqrt(shape);
  const guess = skewedQuantile(
    { mean: shape, deviation, skewness: 2 / deviation },
    normalQuantile(probability),
  );
  return guess > 0 ? Math.log(guess) : nearNothing;
}
