import type { Gamma } from "#lib/statistics/gamma";
import { normalDraw, type Random } from "#lib/statistics/normal-draw";

/**
 * A draw from a gamma distribution.
 *
 * @param gamma shape and scale, both above 0
 * @param random source of chance
 * @returns the draw, in the unit of the scale
 * @throws RangeError when the shape or the scale is not above 0
 * @see Marsaglia and Tsang (2000), A simple method for generating gamma variables; below shape 1 a draw of shape + 1
 * times u^(1 / shape) (from memory; moments and shares in the tests)
 * @example gammaDraw({ shape: 4, scale: 0.25 }, random) // 0.9...
 */
export function gammaDraw({ shape, scale }: Gamma, random: Random): number {
  if (!(shape > 0 && scale > 0 && Number.isFinite(shape) && Number.isFinite(scale))) {
    throw new RangeError(`gammaDraw requires a shape and a scale above 0, got ${shape} and ${scale}`);
  }
  if (shape < 1) {
    return gammaDraw({ shape: shape + 1, scale }, random) * (1 - random()) ** (1 / shape);
  }
  const third = shape - 1 / 3;
  const spread = 1 / Math.sqrt(9 * third);
  for (;;) {
    const normal = normalDraw(random);
    const cube = (1 + spread * normal) ** 3;
    if (cube <= 0) continue;
    if (Math.log(1 - random()) < (normal * normal) / 2 + third * (1 - cube + Math.log(cube))) {
      return scale * third * cube;
    }
  }
}
