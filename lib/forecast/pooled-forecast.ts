import { countQuantile } from "#lib/forecast/count-quantile";
import { dispersion, type ForecastAndActual, shrunkDispersion } from "#lib/forecast/dispersion";
import { levelAndShare } from "#lib/forecast/level-and-share";

/** Forecast of the sum over the coming steps for each item type of a shop. */
export type PooledForecast = {
  /** expected sums, one an item type */
  readonly means: readonly number[];
  /** k of each item type's variance, mean + k mean² */
  readonly dispersions: readonly number[];
  /** sums that are not exceeded with a chance between 0 and 1 */
  readonly quantiles: (chance: number) => number[];
};

/** Fewer weeks say nothing of how far off a forecast is. */
const FEWEST_SEEN = 4;

/**
 * Pieces of each item type over the coming steps as one sum: the shop's level times the type's share, spread
 * as a negative binomial whose dispersion is what past forecasts of such sums showed.
 *
 * @param series pieces a week of each item type, all of the same length, oldest first
 * @param steps how many weeks the sum is over, a whole number from 1
 * @returns means, dispersions and quantiles in the order of the series
 * @throws RangeError as `levelAndShare`
 * @example pooledForecast(piecesByType, 3).quantiles(0.95)
 */
export function pooledForecast(series: readonly (readonly number[])[], steps: number): PooledForecast {
  const means = meansOver(series, steps);
  const past = pastForecasts(series, steps);
  const pooled = dispersion(past.flat());
  const looks = (past[0]?.length ?? 0) / steps;
  const dispersions = past.map((own) => shrunkDispersion(dispersion(own), pooled, looks));
  return {
    means,
    dispersions,
    quantiles: (chance) => means.map((mean, index) => countQuantile(mean, dispersions[index] ?? 0, chance)),
  };
}

function meansOver(series: readonly (readonly number[])[], steps: number): number[] {
  const { level, shares } = levelAndShare(series);
  return shares.map((share) => steps * level * share);
}

/** For each series what would have been forecast from each past week on, and what then came. */
function pastForecasts(series: readonly (readonly number[])[], steps: number): ForecastAndActual[][] {
  const weeks = series[0]?.length ?? 0;
  const origins = Array.from(
    { length: Math.max(0, weeks - steps - FEWEST_SEEN + 1) },
    (_, index) => FEWEST_SEEN + index,
  );
  const looks = origins.map((origin) => ({
    origin,
    means: meansOver(
      series.map((values) => values.slice(0, origin)),
      steps,
    ),
  }));
  return series.map((values, index) =>
    looks.map(({ origin, means }) => ({
      forecast: means[index] ?? 0,
      actual: values.slice(origin, origin + steps).reduce((sum, value) => sum + value, 0),
    })),
  );
}
