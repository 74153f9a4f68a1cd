/** A forecast of a sum and what came. */
export type ForecastAndActual = { readonly forecast: number; readonly actual: number };

/**
 * How much more a sum spreads than uses that come by chance: k in variance = perUse mean + k mean², estimated by
 * moments from past forecasts, whose own error is in it.
 *
 * k = sum((actual - forecast)² - perUse forecast) / sum(forecast²), not below 0
 *
 * @param past forecasts of sums and what came, of one item type or of many
 * @param perUse what one use takes; 1 for a count of single pieces
 * @returns k, 0 without a forecast above 0
 * @see Cameron and Trivedi (1998), Regression Analysis of Count Data, negative binomial variance (NB2) (from memory)
 * @example dispersion([{ forecast: 10, actual: 20 }]) // 0.9
 */
export function dispersion(past: readonly ForecastAndActual[], perUse = 1): number {
  const excess = past.reduce(
    (sum, { forecast, actual }) => sum + (actual - forecast) ** 2 - perUse * forecast,
    0,
  );
  const squares = past.reduce((sum, { forecast }) => sum + forecast * forecast, 0);
  return squares === 0 ? 0 : Math.max(0, excess / squares);
}
