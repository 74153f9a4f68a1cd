import {
  type Forecaster,
  type ForecastingMethod,
  type MethodParameters,
  parameter,
  requireValues,
  type Series,
} from "#lib/forecast/methods/forecasting-method";
import { smooth, smoothingForecast, smoothingVarianceGrowth } from "#lib/forecast/methods/smoothing";
import { type SmoothingFit, smoothingFit } from "#lib/forecast/methods/smoothing-fit";
import { ruleOf, type SmoothingRecipe, UNUSED_CONSTANTS } from "#lib/forecast/methods/smoothing-recipe";

/**
 * A smoothing method from its recipe; the best constants are those with the least sum of squared one-step
 * errors, over the constants and the start together.
 *
 * @param recipe constants, season and start
 * @returns the method
 */
export function smoothingMethod(recipe: SmoothingRecipe): ForecastingMethod {
  const method = {
    name: recipe.name,
    fewestValues: recipe.fewestValues,
    freedom: (seasonLength: number) => freedomOf(recipe, seasonLength),
    fixed: (series: Series, parameters: MethodParameters): Forecaster => {
      requireSuited(series);
      const given = recipe.constants.map(({ name }) => [name, parameter(parameters, name, recipe.name)]);
      return smoothed(recipe, series, {
        constants: { ...UNUSED_CONSTANTS, ...Object.fromEntries(given) },
        start: recipe.start(series),
      });
    },
    fitted: (series: Series): Forecaster => {
      requireSuited(series);
      return smoothed(recipe, series, smoothingFit(recipe, series, "constants-and-start"));
    },
  };
  function requireSuited(series: Series): void {
    requireValues(method, series);
    const least = Math.min(...series.values);
    if (recipe.season === "multiplicative" && least <= 0) {
      throw new RangeError(`${recipe.name} requires values above 0, got ${least}`);
    }
  }
  return method;
}

/**
 * A smoothing method with given constants and start, having seen a series.
 *
 * @param recipe of the method
 * @param series at least as long as the method needs
 * @param fit constants, and the state before the first value
 */
export function smoothed(
  recipe: SmoothingRecipe,
  series: Series,
  { constants, start }: SmoothingFit,
): Forecaster {
  const rule = ruleOf(recipe, constants);
  const skipped = recipe.skipped?.(series) ?? 0;
  const { errors, state } = smooth(series.values.slice(skipped), rule, start);
  return {
    parameters: Object.fromEntries(recipe.constants.map(({ name }) => [name, constants[name]])),
    errors,
    forecast: (steps) => smoothingForecast(state, rule, steps),
    forecastAfter: (count, steps) => {
      if (count < skipped) {
        throw new RangeError(`${recipe.name} requires ${skipped} values before it looks ahead, got ${count}`);
      }
      return smoothingForecast(smooth(series.values.slice(skipped, count), rule, start).state, rule, steps);
    },
    varianceGrowth: (steps) => smoothingVarianceGrowth(rule, series.seasonLength, steps),
  };
}

/** A constant each, the level, the trend where there is one, and the seasons, which add up to a fixed sum. */
function freedomOf({ constants, season }: SmoothingRecipe, seasonLength: number): number {
  const trend = constants.some(({ name }) => name === "betaStar") ? 1 : 0;
  return constants.length + 1 + trend + (season === "none" ? 0 : seasonLength - 1);
}
