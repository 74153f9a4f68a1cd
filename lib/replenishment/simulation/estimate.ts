/** A mean over runs, and by how much it may be off by chance. */
export type Estimate = { readonly mean: number; readonly standardError: number };

/**
 * Mean over runs with its standard error.
 *
 * @param values one of each run, independent
 * @returns the error of a single run is not known: infinite
 * @throws RangeError when there is no value
 * @see sample deviation / sqrt(runs)
 * @example meanEstimate([1, 3]) // { mean: 2, standardError: 1 }
 */
export function meanEstimate(values: readonly number[]): Estimate {
  const runs = values.length;
  if (runs === 0) throw new RangeError("meanEstimate requires a value, got none");
  const mean = values.reduce((sum, value) => sum + value, 0) / runs;
  if (runs === 1) return { mean, standardError: Infinity };
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { mean, standardError: Math.sqrt(squares / (runs - 1) / runs) };
}

/**
 * A share over all runs together, parts / wholes, with its standard error.
 *
 * @param pairs part and whole of each run
 * @returns the share, null where the wholes come to nothing
 * @see Cochran (1977), Sampling Techniques, ratio estimator: error of part - share x whole (from memory; checked by
 * drawing in the tests)
 * @example shareEstimate([{ part: 1, whole: 4 }, { part: 3, whole: 4 }]).mean // 0.5
 */
export function shareEstimate(
  pairs: readonly { readonly part: number; readonly whole: number }[],
): Estimate | null {
  const whole = pairs.reduce((sum, pair) => sum + pair.whole, 0);
  if (whole === 0) return null;
  const share = pairs.reduce((sum, { part }) => sum + part, 0) / whole;
  const { standardError } = meanEstimate(pairs.map((pair) => pair.part - share * pair.whole));
  return { mean: share, standardError: (standardError * pairs.length) / Math.abs(whole) };
}
