import type { Series } from "#lib/forecast/methods/forecasting-method";
import {
  holtWintersAdditiveRecipe,
  holtWintersMultiplicativeRecipe,
} from "#lib/forecast/methods/holt-winters";
import type { SmoothingState } from "#lib/forecast/methods/smoothing";
import type { StateSpaceModel } from "#lib/forecast/methods/state-space-model";
import { straightLine } from "#lib/forecast/methods/straight-line";

/** A line through so many first values is not thrown by one of them. */
const FIRST_VALUES = 10;

/**
 * A state before the first value, as the place from which a model's own is searched: from the first two
 * seasons as in Holt-Winters; without a season from the straight line through the first ten values, or their
 * mean where there is no trend.
 *
 * @param model which parts the state has
 * @param series of two seasons where the model has one
 * @returns level, trend (0 where there is none) and seasons
 */
export function stateSpaceStart({ trend, season }: StateSpaceModel, series: Series): SmoothingState {
  if (season !== "none") {
    const recipe = season === "additive" ? holtWintersAdditiveRecipe : holtWintersMultiplicativeRecipe;
    const start = recipe.start(series);
    return trend === "none" ? { ...start, trend: 0 } : start;
  }
  const first = series.values.slice(0, FIRST_VALUES);
  const line = straightLine(first);
  if (trend !== "none") return { level: line.level, trend: line.slope, seasons: [] };
  return { level: first.reduce((sum, value) => sum + value, 0) / first.length, trend: 0, seasons: [] };
}
