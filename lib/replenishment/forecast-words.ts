import { SEVERAL_METHODS } from "#lib/forecast/route";
import { FIRST_WEEKS_METHOD } from "#lib/forecast/shop/first-weeks-outlook";
import { BY_RECIPES } from "#lib/forecast/shop/recipe-route";
import type { SubjectForecast } from "#lib/forecast/shop/subject-forecast";

/**
 * Words for how the expected use of a supply was found.
 *
 * @param forecast the supply's forecast
 * @returns a phrase that can begin a sentence
 * @example forecastWords(forecast) // "Pieces of each item type by today's recipes"
 */
export function forecastWords({ method, weeksSeen }: SubjectForecast): string {
  const weeks = weeksSeen === 1 ? "1 week" : `${weeksSeen} weeks`;
  if (method === FIRST_WEEKS_METHOD)
    return weeksSeen === 0 ? "From the first days" : `From the first ${weeks}`;
  if (method === BY_RECIPES) return "Expected pieces of each item type by today's recipes";
  if (method === "recipes and own history")
    return "Mean of pieces by today's recipes and of the supply's own weeks";
  if (method === SEVERAL_METHODS) return `Mean of the methods that were nearest over ${weeks}`;
  return `The supply's own ${weeks}, by ${method}`;
}
