import type { Series } from "#lib/forecast/methods/forecasting-method";
import type {
  SeasonKind,
  SmoothingConstants,
  SmoothingRule,
  SmoothingState,
} from "#lib/forecast/methods/smoothing";

/** A constant of a smoothing method: its bounds, and the values from whose combinations the searches start. */
export type SmoothingConstant = {
  readonly name: keyof SmoothingConstants;
  readonly bounds: readonly [number, number];
  readonly starts: readonly number[];
};

/** What makes a smoothing method. */
export type SmoothingRecipe = {
  readonly name: string;
  readonly constants: readonly SmoothingConstant[];
  readonly season: SeasonKind;
  readonly fewestValues: (seasonLength: number) => number;
  /** state before the first value, from the first values */
  readonly start: (series: Series) => SmoothingState;
  /** values already used up by the start, that get no error; 0 if left out */
  readonly skipped?: (series: Series) => number;
  readonly seasonFrom?: SmoothingRule["seasonFrom"];
};

/** Constants that a recipe does not name: no trend, no damping, no season. */
export const UNUSED_CONSTANTS: SmoothingConstants = { alpha: 0, betaStar: 0, phi: 1, gamma: 0 };

/** The rule of a recipe with constants. */
export function ruleOf(recipe: SmoothingRecipe, constants: SmoothingConstants): SmoothingRule {
  return { constants, season: recipe.season, seasonFrom: recipe.seasonFrom ?? "old-level" };
}
