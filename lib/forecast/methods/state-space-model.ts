import type { Series } from "#lib/forecast/methods/forecasting-method";
import type { SeasonKind } from "#lib/forecast/methods/smoothing";

/**
 * Exponential smoothing as a model of how a series comes about: its errors are of one size, or grow with what
 * was expected; its trend and its season are smoothed along with the level, or missing.
 */
export type StateSpaceModel = {
  readonly error: "additive" | "multiplicative";
  readonly trend: "none" | "additive" | "damped";
  readonly season: SeasonKind;
};

/** Values of the longest season that is fitted: one of more has more states than a small shop's history can tell. */
export const LONGEST_SEASON = 24;
const ERRORS = ["additive", "multiplicative"] as const;
const SEASONS = ["none", "additive", "multiplicative"] as const;
const TRENDS = ["none", "additive", "damped"] as const;

/**
 * How many numbers a model takes from a series: its constants, the level, the trend, and the seasons, which
 * add up to a fixed sum.
 *
 * @param model which one
 * @param seasonLength values a season
 */
export function stateSpaceFreedom({ trend, season }: StateSpaceModel, seasonLength: number): number {
  const ofTrend = { none: 0, additive: 2, damped: 3 }[trend];
  return 2 + ofTrend + (season === "none" ? 0 : seasonLength);
}

/**
 * The models that a series can be fitted with, simplest first. Values of 0 or below allow only additive ones.
 * Additive errors with a season factor are left out, as the variance may not exist; so is a season of one
 * value or of more than 24, one that has not come round twice, and a model with too many numbers for the
 * corrected Akaike criterion.
 *
 * @param series of any length
 * @returns none where the series has fewer than five values
 * @see Hyndman, Koehler, Ord and Snyder (2008), Forecasting with Exponential Smoothing (from memory)
 * @example stateSpaceModels({ values: [3, 0, 4, 1, 2, 5], seasonLength: 1 }) // without a trend, additive
 */
export function stateSpaceModels({ values, seasonLength }: Series): StateSpaceModel[] {
  const isAboveZero = values.every((value) => value > 0);
  const hasSeason = seasonLength > 1 && seasonLength <= LONGEST_SEASON && values.length >= 2 * seasonLength;
  const all = ERRORS.flatMap((error) =>
    SEASONS.flatMap((season) => TRENDS.map((trend): StateSpaceModel => ({ error, trend, season }))),
  );
  return all
    .filter(({ error, season }) => season !== "multiplicative" || error === "multiplicative")
    .filter(({ error }) => isAboveZero || error === "additive")
    .filter(({ season }) => hasSeason || season === "none")
    .filter((model) => values.length - (stateSpaceFreedom(model, seasonLength) + 1) - 1 > 0);
}
