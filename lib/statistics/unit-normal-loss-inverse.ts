import { normalCumulative } from "#lib/statistics/normal-cumulative";
import { unitNormalLoss } from "#lib/statistics/unit-normal-loss";

const LOSS_AT_MEAN = unitNormalLoss(0);
const LEAST_LOSS = 1e-300;
const STEPS = 60;
const CLOSE = 1e-15;

/**
 * The z whose unit normal loss is `loss`: how many standard deviations above the mean the stock must reach
 * for that expected shortage. Newton steps that close in from one side: on G, which is convex, below the
 * mean; on log G, which is concave, above it.
 *
 * @param loss mean excess in standard deviations, from 1e-300
 * @returns z, standard deviations above the mean
 * @throws RangeError when the loss is below 1e-300 or not finite
 * @see Newton's method with G'(z) = -(1 - Phi(z)) (from memory; the values are checked in the tests)
 * @example unitNormalLossInverse(0.1) // 0.902346347510035
 */
export function unitNormalLossInverse(loss: number): number {
  if (!(loss >= LEAST_LOSS && Number.isFinite(loss))) {
    throw new RangeError(`unitNormalLossInverse requires a finite loss from ${LEAST_LOSS}, got ${loss}`);
  }
  const isAboveMean = loss <= LOSS_AT_MEAN;
  let z = isAboveMean ? Math.sqrt(-2 * Math.log(loss)) : -loss;
  for (let step = 0; step < STEPS; step += 1) {
    const here = unitNormalLoss(z);
    const gap = isAboveMean ? here * Math.log(here / loss) : here - loss;
    const move = gap / normalCumulative(-z);
    z += move;
    if (Math.abs(move) <= CLOSE * Math.max(1, Math.abs(z))) break;
  }
  return z;
}
