import type { Series } from "#lib/forecast/methods/forecasting-method";

/** Standard normal quantile of 0.95: a two-sided test at 90 %. */
const CRITICAL = 1.6448536269514722;

/**
 * Whether a series shows a season: its autocorrelation at the season's length stands out from what the
 * shorter lags explain, at 90 %.
 *
 * |r[m]| / sqrt((1 + 2 (r[1]² + ... + r[m-1]²)) / n) > 1.645
 *
 * @param series any; shorter than two seasons and one value: no
 * @see Bartlett's formula for the variance of an autocorrelation; Fiorucci and others (2016), International
 * Journal of Forecasting 32 (from memory)
 */
export function isSeasonal(series: Series): boolean {
  const { values, seasonLength } = series;
  if (seasonLength < 2 || values.length <= 2 * seasonLength) return false;
  const correlations = autocorrelations(values, seasonLength);
  if (correlations === null) return false;
  const before = correlations.slice(0, -1).reduce((sum, each) => sum + each * each, 0);
  const error = Math.sqrt((1 + 2 * before) / values.length);
  return Math.abs(correlations.at(-1) ?? 0) / error > CRITICAL;
}

/** Autocorrelations at the lags 1 to `most`; null where the values are all the same. */
function autocorrelations(values: readonly number[], most: number): number[] | null {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const off = values.map((value) => value - mean);
  const variance = off.reduce((sum, value) => sum + value * value, 0);
  if (variance === 0) return null;
  return Array.from({ length: most }, (_, index) => {
    const lag = index + 1;
    return off.slice(lag).reduce((sum, value, place) => sum + value * (off[place] ?? 0), 0) / variance;
  });
}
