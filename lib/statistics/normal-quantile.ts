import { polynomial } from "#lib/statistics/polynomial";

// Wichura (1988), algorithm AS 241, PPND16: rational approximations, highest power first.
const CENTRE_TOP = [
  2509.0809287301227, 33430.57558358813, 67265.7709270087, 45921.95393154987, 13731.69376550946,
  1971.5909503065513, 133.14166789178438, 3.3871328727963665,
];
const CENTRE_BOTTOM = [
  5226.495278852546, 28729.085735721943, 39307.89580009271, 21213.794301586597, 5394.196021424751,
  687.1870074920579, 42.31333070160091, 1,
];
const SHOULDER_TOP = [
  0.0007745450142783414, 0.022723844989269184, 0.2417807251774506, 1.2704582524523684, 3.6478483247632045,
  5.769497221460691, 4.630337846156546, 1.4234371107496835,
];
const SHOULDER_BOTTOM = [
  1.0507500716444169e-9, 0.0005475938084995345, 0.015198666563616457, 0.14810397642748008, 0.6897673349851,
  1.6763848301838038, 2.053191626637759, 1,
];
const TAIL_TOP = [
  2.0103343992922881e-7, 2.7115555687434876e-5, 0.0012426609473880784, 0.026532189526576124,
  0.29656057182850487, 1.7848265399172913, 5.463784911164114, 6.657904643501103,
];
const TAIL_BOTTOM = [
  2.0442631033899397e-15, 1.421511758316446e-7, 1.8463183175100548e-5, 0.0007868691311456133,
  0.014875361290850615, 0.1369298809227358, 0.599832206555888, 1,
];
const CENTRE_HALF_WIDTH = 0.425;
const CENTRE_CONSTANT = 0.180625;
const TAIL_FROM = 5;

/**
 * Normal quantile: how many standard deviations above the mean a share `probability` of a normal
 * distribution lies below. Relative error about 1e-16.
 *
 * @param probability between 0 and 1, both excluded
 * @returns the z of that probability, without unit
 * @throws RangeError when the probability is not between 0 and 1
 * @see Wichura, M. J. (1988), Algorithm AS 241: the percentage points of the normal distribution,
 * Applied Statistics 37, 477-484 (from memory; the values are checked in the tests)
 * @example normalQuantile(0.95) // 1.6448536269514722
 */
export function normalQuantile(probability: number): number {
  if (!(probability > 0 && probability < 1)) {
    throw new RangeError(`normalQuantile requires a probability between 0 and 1, got ${probability}`);
  }
  const fromCentre = probability - 0.5;
  if (Math.abs(fromCentre) <= CENTRE_HALF_WIDTH) {
    const r = CENTRE_CONSTANT - fromCentre * fromCentre;
    return (fromCentre * polynomial(CENTRE_TOP, r)) / polynomial(CENTRE_BOTTOM, r);
  }
  const tail = Math.min(probability, 1 - probability);
  return Math.sign(fromCentre) * outerQuantile(Math.sqrt(-Math.log(tail)));
}

function outerQuantile(root: number): number {
  if (root <= TAIL_FROM) {
    return polynomial(SHOULDER_TOP, root - 1.6) / polynomial(SHOULDER_BOTTOM, root - 1.6);
  }
  return polynomial(TAIL_TOP, root - TAIL_FROM) / polynomial(TAIL_BOTTOM, root - TAIL_FROM);
}
