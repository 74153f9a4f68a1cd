/** How a season joins the level: not at all, as a sum, or as a product. */
export type SeasonKind = "none" | "additive" | "multiplicative";

/** Constants of exponential smoothing, each 0 to 1. `betaStar` weighs the change of the level. */
export type SmoothingConstants = {
  readonly alpha: number;
  readonly betaStar: number;
  /** damping of the trend; 1: none */
  readonly phi: number;
  readonly gamma: number;
};

/** Level, trend and seasons; the first season belongs to the next value. */
export type SmoothingState = {
  readonly level: number;
  readonly trend: number;
  readonly seasons: readonly number[];
};

/** A smoothing rule: constants, kind of season, and from which level the season is renewed. */
export type SmoothingRule = {
  readonly constants: SmoothingConstants;
  readonly season: SeasonKind;
  /** the level before the value came (state space form), or after it (Winters' own) */
  readonly seasonFrom: "old-level" | "new-level";
};

/** One-step errors of a series, oldest first, and the state after it. */
export type Smoothed = { readonly errors: number[]; readonly state: SmoothingState };

/**
 * Exponential smoothing with level, trend and season: one recursion for simple smoothing (no trend, no
 * season), Holt's line, the damped trend and Holt-Winters.
 *
 * l[t] = alpha (y[t] - s[t-m]) + (1 - alpha) (l[t-1] + phi b[t-1])
 * b[t] = betaStar (l[t] - l[t-1]) + (1 - betaStar) phi b[t-1]
 * s[t] = gamma (y[t] - l[t-1] - phi b[t-1]) + (1 - gamma) s[t-m]; products and quotients where multiplicative
 *
 * @param values oldest first
 * @param rule constants and kind of season
 * @param start state before the first value
 * @returns errors of the forecasts one step ahead, and the last state
 * @see Hyndman and Athanasopoulos, Forecasting: Principles and Practice, "exponential smoothing"; Winters
 * (1960), Management Science 6 (from memory)
 * @example smooth([10, 20], { constants: { alpha: 0.5, betaStar: 0, phi: 1, gamma: 0 }, season: "none",
 *   seasonFrom: "old-level" }, { level: 10, trend: 0, seasons: [] }).state.level // 15
 */
export function smooth(values: readonly number[], rule: SmoothingRule, start: SmoothingState): Smoothed {
  const { alpha, betaStar, phi, gamma } = rule.constants;
  const errors = new Array<number>(values.length);
  const seasons = [...start.seasons];
  let { level, trend } = start;
  let place = 0;
  for (let index = 0; index < values.length; index += 1) {
    const value = values[index] ?? 0;
    const line = level + phi * trend;
    const season = seasons[place] ?? 0;
    errors[index] = value - seasoned(line, season, rule.season);
    const next = alpha * unseasoned(value, season, rule.season) + (1 - alpha) * line;
    if (rule.season !== "none") {
      const base = rule.seasonFrom === "old-level" ? line : next;
      seasons[place] = gamma * seasonOf(value, base, rule.season) + (1 - gamma) * season;
      place = place + 1 === seasons.length ? 0 : place + 1;
    }
    trend = betaStar * (next - level) + (1 - betaStar) * phi * trend;
    level = next;
  }
  return { errors, state: { level, trend, seasons: [...seasons.slice(place), ...seasons.slice(0, place)] } };
}

/**
 * Forecast from a smoothing's state: the level, the damped trend added up, and the season that comes.
 *
 * @param state after the newest value
 * @param rule as in `smooth`
 * @param steps how many
 * @returns expected values
 */
export function smoothingForecast(state: SmoothingState, rule: SmoothingRule, steps: number): number[] {
  const { phi } = rule.constants;
  const forecast: number[] = [];
  let damped = 0;
  let power = 1;
  for (let step = 0; step < steps; step += 1) {
    power *= phi;
    damped += power;
    const season = state.seasons[step % Math.max(1, state.seasons.length)] ?? 0;
    forecast.push(seasoned(state.level + damped * state.trend, season, rule.season));
  }
  return forecast;
}

/**
 * How the variance of the error grows with the steps ahead: 1 + c[1]² + ... + c[h-1]²,
 * c[j] = alpha + alpha betaStar (phi + ... + phi^j) + gamma where j comes round to the season. Exact for
 * additive errors and seasons, an approximation for multiplicative ones.
 *
 * @param rule as in `smooth`
 * @param seasonLength values a season
 * @param steps how many
 * @see Hyndman, Koehler, Ord and Snyder (2008), Forecasting with Exponential Smoothing, table 6.2 (from memory)
 */
export function smoothingVarianceGrowth(rule: SmoothingRule, seasonLength: number, steps: number): number[] {
  const { alpha, betaStar, phi, gamma } = rule.constants;
  const growth: number[] = [];
  let sum = 1;
  let damped = 0;
  for (let step = 1; step <= steps; step += 1) {
    growth.push(sum);
    damped += phi ** step;
    const comesRound = rule.season !== "none" && step % seasonLength === 0;
    sum += (alpha + alpha * betaStar * damped + (comesRound ? gamma : 0)) ** 2;
  }
  return growth;
}

function seasoned(line: number, season: number, kind: SeasonKind): number {
  if (kind === "none") return line;
  return kind === "additive" ? line + season : line * season;
}

function unseasoned(value: number, season: number, kind: SeasonKind): number {
  if (kind === "none") return value;
  return kind === "additive" ? value - season : value / season;
}

function seasonOf(value: number, base: number, kind: SeasonKind): number {
  return kind === "additive" ? value - base : value / base;
}
