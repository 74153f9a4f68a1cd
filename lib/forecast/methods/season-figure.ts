import type { Series } from "#lib/forecast/methods/forecasting-method";

/** A series parted into its trend and its season. */
export type Decomposition = {
  /** centred average over a season; null at both ends, where it does not reach */
  readonly trend: readonly (number | null)[];
  /** the season's figure, one entry a place; the first belongs to the first value */
  readonly figure: readonly number[];
};

/**
 * Classical decomposition: the trend is the centred moving average over a season, the figure the mean of
 * value over trend (or value less trend) at each place, brought to a mean of 1 (or 0).
 *
 * @param series of at least two seasons
 * @param kind a factor, or a sum
 * @returns trend and figure
 * @throws RangeError when the series is shorter than two seasons
 * @see Kendall and Stuart (1983), The Advanced Theory of Statistics, vol. 3 (from memory)
 */
export function decomposition(series: Series, kind: "additive" | "multiplicative"): Decomposition {
  const { values, seasonLength } = series;
  if (seasonLength < 2 || values.length < 2 * seasonLength) {
    throw new RangeError(
      `decomposition requires two seasons of at least 2 values, got ${values.length} values of ${seasonLength}`,
    );
  }
  const trend = centredAverage(values, seasonLength);
  const parts = values.map((value, index) => {
    const middle = trend[index] ?? null;
    if (middle === null) return null;
    return kind === "additive" ? value - middle : value / middle;
  });
  const places = Array.from({ length: seasonLength }, (_, place) => {
    const own = parts.filter(
      (part, index): part is number => part !== null && index % seasonLength === place && !Number.isNaN(part),
    );
    return own.reduce((sum, part) => sum + part, 0) / own.length;
  });
  const mean = places.reduce((sum, place) => sum + place, 0) / seasonLength;
  return { trend, figure: places.map((place) => (kind === "additive" ? place - mean : place / mean)) };
}

function centredAverage(values: readonly number[], seasonLength: number): (number | null)[] {
  const half = Math.floor(seasonLength / 2);
  const isEven = seasonLength % 2 === 0;
  return values.map((_, index) => {
    if (index < half || index + half >= values.length) return null;
    const around = values.slice(index - half, index + half + 1);
    const sum = around.reduce((total, value) => total + value, 0);
    const ends = isEven ? ((around[0] ?? 0) + (around.at(-1) ?? 0)) / 2 : 0;
    return (sum - ends) / seasonLength;
  });
}
