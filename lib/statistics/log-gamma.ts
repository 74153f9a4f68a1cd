import { polynomial } from "#lib/statistics/polynomial";

const HALF_LOG_TWO_PI = 0.9189385332046728;
const STIRLING_FROM = 10;

/** 1 / 12, -1 / 360, ...: B(2k) / (2k (2k - 1)) of Stirling's series in 1 / x^2, highest power first. */
const STIRLING = [1 / 156, -691 / 360360, 1 / 1188, -1 / 1680, 1 / 1260, -1 / 360, 1 / 12];

/** zeta(k) - 1 for k = 2, 3, ..., as far as it counts in the Taylor series around 2. */
const ZETA_LESS_ONE = [
  0.6449340668482264, 0.2020569031595943, 0.08232323371113819, 0.03692775514336993, 0.01734306198444914,
  0.008349277381922827, 0.004077356197944339, 0.0020083928260822143, 0.0009945751278180853,
  0.0004941886041194646, 0.0002460865533080483, 0.0001227133475784891, 6.124813505870483e-5,
  3.058823630702049e-5, 1.528225940865187e-5, 7.637197637899763e-6, 3.81729326499984e-6, 1.908212716553939e-6,
  9.539620338727962e-7, 4.769329867878064e-7, 2.38450502727733e-7, 1.1921992596531106e-7,
  5.960818905125948e-8, 2.980350351465228e-8, 1.490155482836504e-8,
];
const ONE_LESS_EULER = 0.42278433509846713;
const AROUND_TWO = [
  ...ZETA_LESS_ONE.map((zeta, index) => ((index % 2 === 0 ? 1 : -1) * zeta) / (index + 2)).reverse(),
  ONE_LESS_EULER,
  0,
];

/**
 * Natural logarithm of the gamma function. Relative error about 1e-15, also near 1 and 2, where the
 * logarithm is 0: a Taylor series around 2 for small arguments, Stirling's series for large ones.
 *
 * @param x above 0
 * @returns ln Gamma(x)
 * @throws RangeError when x is not above 0 or not finite
 * @see Abramowitz and Stegun (1964), Handbook of Mathematical Functions, 6.1.33 and 6.1.41 (from memory;
 * the values are checked in the tests)
 * @example logGamma(5) // 3.1780538303479458, which is ln 24
 */
export function logGamma(x: number): number {
  if (!(x > 0 && Number.isFinite(x))) {
    throw new RangeError(`logGamma requires a finite number above 0, got ${x}`);
  }
  if (x < 0.5) return polynomial(AROUND_TWO, x) - Math.log1p(x) - Math.log(x);
  if (x < 1.5) return polynomial(AROUND_TWO, x - 1) - Math.log1p(x - 1);
  if (x < 2.5) return polynomial(AROUND_TWO, x - 2);
  if (x >= STIRLING_FROM) return (x - 0.5) * Math.log(x) - x + HALF_LOG_TWO_PI + stirlingSeries(x);
  let reduced = x;
  let product = 1;
  while (reduced >= 2.5) {
    reduced -= 1;
    product *= reduced;
  }
  return Math.log(product) + polynomial(AROUND_TWO, reduced - 2);
}

/**
 * What Stirling's formula sqrt(2 pi x) (x / e)^x leaves of Gamma(x + 1), as a logarithm. With it the
 * factorials of a probability need no difference of large logarithms.
 *
 * @param x above 0
 * @returns ln Gamma(x + 1) - ln(sqrt(2 pi x) (x / e)^x)
 * @throws RangeError when x is not above 0 or not finite
 * @see C. Loader (2000), Fast and accurate computation of binomial probabilities (from memory)
 * @example stirlingRemainder(1) // 0.0810614667953272
 */
export function stirlingRemainder(x: number): number {
  if (!(x > 0 && Number.isFinite(x))) {
    throw new RangeError(`stirlingRemainder requires a finite number above 0, got ${x}`);
  }
  if (x >= STIRLING_FROM) return stirlingSeries(x);
  return logGamma(x + 1) - (x + 0.5) * Math.log(x) + x - HALF_LOG_TWO_PI;
}

function stirlingSeries(x: number): number {
  return polynomial(STIRLING, 1 / x / x) / x;
}
