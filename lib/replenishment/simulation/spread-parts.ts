import type { SumSpread } from "#lib/forecast/sum-spread";

/** Squared variation of what moves all weeks of a run alike, and of what each week adds by itself. */
export type SpreadParts = { readonly common: number; readonly weekly: number };

/**
 * Splits the spread of sums into a factor common to all weeks of a run (the forecast is too high or too low
 * throughout) and one of each week by itself, so that the sums of one week and of the most weeks that a spread is known
 * for have its dispersions.
 *
 * k of n weeks = common + (k of 1 - common) / n
 *
 * Where long sums are no surer than single weeks, all is common; the single week then has the dispersion of the long
 * sum. Where they are surer than independent weeks could be, nothing is.
 *
 * @param dispersions k for sums of 1, 2, 3, ... weeks
 * @returns the two squared variations; of the weekly factor after the common one
 * @see variance of a product of independent factors of mean 1 (worked out; checked by drawing in the tests)
 * @example spreadParts([0.3, 0.2]) // { common: 0.1, weekly: 0.2 / 1.1 }
 */
export function spreadParts(dispersions: SumSpread["dispersions"]): SpreadParts {
  const weeks = dispersions.length;
  const single = dispersions[0] ?? 0;
  const longest = dispersions.at(-1) ?? 0;
  if (weeks < 2 || longest >= single) return { common: longest, weekly: 0 };
  const common = Math.max(0, (weeks * longest - single) / (weeks - 1));
  return { common, weekly: (single - common) / (1 + common) };
}
