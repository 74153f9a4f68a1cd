import { normalDensity } from "#lib/statistics/normal-density";
import { polynomial } from "#lib/statistics/polynomial";

// Cody (1969): rational approximations of the error function, scaled to the normal, highest power first.
const CENTRE_TOP = [
  0.06568233791820745, 2.2352520354606837, 161.02823106855587, 1067.6894854603709, 18154.98125334356,
];
const CENTRE_BOTTOM = [1, 47.202581904688245, 976.0985517377767, 10260.932208618979, 45507.78933502673];
const SHOULDER_TOP = [
  1.0765576773720192e-8, 0.39894151208813466, 8.883149794388377, 93.50665613217785, 597.2702763948002,
  2494.5375852903726, 6848.190450536283, 11602.65143764735, 9842.714838383978,
];
const SHOULDER_BOTTOM = [
  1, 22.266688044328117, 235.387901782625, 1519.3775994075547, 6485.558298266761, 18615.571640885097,
  34900.95272114598, 38912.00328609327, 19685.429676859992,
];
const TAIL_TOP = [
  0.023073441764940174, 0.215898534057957, 0.12740116116024736, 0.022235277870649807, 0.0014216191932278934,
  0.000029112874951168793,
];
const TAIL_BOTTOM = [
  1, 1.284260096144911, 0.4682382124808651, 0.06598813786892856, 0.0037823963320275824,
  0.00007297515550839662,
];
const ONE_OVER_ROOT_TWO_PI = 0.3989422804014327;
const ROOT_TWO_PI = 2.5066282746310002;
const CENTRE_HALF_WIDTH = 0.67448975;
const TAIL_FROM = Math.sqrt(32);
/** What is left above is lost beside 1 in a double, and what is left below is under its least number: mixtures ask there often. */
const SURELY_BELOW = 8.5;
const SURELY_ABOVE = -39;

/**
 * Distribution function of the normal distribution: the share that lies below z. Relative error below
 * 1e-12 in both tails, as far as a double reaches; the share above z is normalCumulative(-z).
 *
 * @param z standard deviations above the mean
 * @returns the share below, 0 to 1
 * @throws RangeError when z is not a number
 * @see W. J. Cody (1969), Rational Chebyshev approximations for the error function, Mathematics of
 * Computation 23, 631-637 (from memory; the values are checked in the tests)
 * @example normalCumulative(1.6448536269514722) // 0.95
 */
export function normalCumulative(z: number): number {
  if (Number.isNaN(z)) throw new RangeError(`normalCumulative requires a number, got ${z}`);
  if (z > SURELY_BELOW) return 1;
  if (z < SURELY_ABOVE) return 0;
  const far = Math.abs(z);
  if (far <= CENTRE_HALF_WIDTH) {
    return 0.5 + (z * polynomial(CENTRE_TOP, z * z)) / polynomial(CENTRE_BOTTOM, z * z);
  }
  const tail = far <= TAIL_FROM ? shoulder(far) : outerTail(far);
  return z > 0 ? 1 - tail : tail;
}

function shoulder(far: number): number {
  const ratio = polynomial(SHOULDER_TOP, far) / polynomial(SHOULDER_BOTTOM, far);
  return ROOT_TWO_PI * normalDensity(far) * ratio;
}

function outerTail(far: number): number {
  const r = 1 / (far * far);
  const ratio = (r * polynomial(TAIL_TOP, r)) / polynomial(TAIL_BOTTOM, r);
  return (ROOT_TWO_PI * normalDensity(far) * (ONE_OVER_ROOT_TWO_PI - ratio)) / far;
}
