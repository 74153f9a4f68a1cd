import type { StateSpaceModel } from "#lib/forecast/methods/state-space-model";

/** Errors of a ten-millionth of the values are those of the reckoning: a closer fit counts for nothing. */
const ROUNDING = 1e-7;

/**
 * Residuals whose squares add up to least where a model is most likely. With additive errors these are the
 * errors e; with multiplicative ones the relative errors e / f times the geometric mean of all |f|, f being
 * what was expected: -n/2 log of their sum of squares is then -n/2 log(sum (e / f)²) - sum log |f|.
 *
 * @param error kind of the model's errors
 * @param errors value less what was expected, oldest first
 * @param values as many
 * @returns one a value, in the unit of the series
 * @see Ord, Koehler and Snyder (1997), Journal of the American Statistical Association 92 (from memory)
 */
export function likelihoodResiduals(
  error: StateSpaceModel["error"],
  errors: readonly number[],
  values: readonly number[],
): readonly number[] {
  if (error === "additive") return errors;
  const expected = errors.map((each, index) => (values[index] ?? 0) - each);
  const logs = expected.reduce((sum, each) => sum + Math.log(Math.abs(each)), 0);
  const size = Math.exp(logs / errors.length);
  return errors.map((each, index) => (each / (expected[index] ?? 0)) * size);
}

/**
 * Logarithm of the likelihood, less what is the same for all models of a series: -n/2 log(sum of squares).
 * Held to what an error of rounding would give, so that a perfect fit is finite and the simplest of several
 * perfect models wins.
 *
 * @param residuals from `likelihoodResiduals`
 * @param values the series, whose size says what rounding is
 * @returns larger is more likely; -Infinity where a residual is no number
 */
export function logLikelihood(residuals: readonly number[], values: readonly number[]): number {
  const sum = residuals.reduce((total, each) => total + each * each, 0);
  if (!Number.isFinite(sum)) return Number.NEGATIVE_INFINITY;
  const size = values.reduce((total, each) => total + Math.abs(each), 0) / values.length || 1;
  return (-values.length / 2) * Math.log(Math.max(sum, values.length * (ROUNDING * size) ** 2));
}

/**
 * Akaike's criterion corrected for short series: -2 log likelihood + 2k + 2k (k + 1) / (n - k - 1). The model
 * with the least is expected to come closest to new values.
 *
 * @param likelihood its logarithm, see `logLikelihood`
 * @param freedom constants and states fitted; the variance of the errors makes k one more
 * @param count values n
 * @returns the criterion
 * @throws RangeError when there are too few values
 * @see Hurvich and Tsai (1989), Regression and time series model selection in small samples, Biometrika 76
 * (from memory)
 * @example correctedAkaike(-10, 2, 10) // 20 + 6 + 24 / 6 = 30
 */
export function correctedAkaike(likelihood: number, freedom: number, count: number): number {
  const fitted = freedom + 1;
  const left = count - fitted - 1;
  if (left <= 0) throw new RangeError(`correctedAkaike requires ${fitted + 2} values, got ${count}`);
  return -2 * likelihood + 2 * fitted + (2 * fitted * (fitted + 1)) / left;
}
