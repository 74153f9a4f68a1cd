/** A forecast of a count and what came. */
export type ForecastAndActual = { readonly forecast: number; readonly actual: number };

/**
 * How much more a count spreads than a Poisson one: k in variance = mean + k mean², estimated by moments from
 * past forecasts, whose own error is in it.
 *
 * k = sum((actual - forecast)² - forecast) / sum(forecast²), not below 0
 *
 * @param past forecasts of counts and what came, of one item type or of many
 * @returns k, 0 without a forecast above 0
 * @see Cameron and Trivedi (1998), Regression Analysis of Count Data, negative binomial variance (NB2) (from memory)
 * @example dispersion([{ forecast: 10, actual: 20 }]) // 0.9
 */
export function dispersion(past: readonly ForecastAndActual[]): number {
  const excess = past.reduce((sum, { forecast, actual }) => sum + (actual - forecast) ** 2 - forecast, 0);
  const squares = past.reduce((sum, { forecast }) => sum + forecast * forecast, 0);
  return squares === 0 ? 0 : Math.max(0, excess / squares);
}

/** So many independent looks at one item type weigh as much as all item types together. A guess, no source. */
const LOOKS_OF_BELIEF = 10;

/**
 * Dispersion of one item type, drawn towards that of all types while its own looks are few.
 *
 * @param own its dispersion
 * @param pooled that of all item types
 * @param looks how many independent looks its own rests on; sums that overlap count in proportion
 * @returns k between the two
 * @example shrunkDispersion(0.4, 0.2, 10) // 0.3
 */
export function shrunkDispersion(own: number, pooled: number, looks: number): number {
  const weight = looks / (looks + LOOKS_OF_BELIEF);
  return weight * own + (1 - weight) * pooled;
}
