import { chosenForecast } from "#lib/forecast/chosen-forecast";
import { combined, type Forecasting } from "#lib/forecast/combined";
import type { Series } from "#lib/forecast/methods/forecasting-method";

/** One way to come to a forecast: a method on the series' own history, a reckoning from elsewhere, or a mean of such. */
export type Route = Forecasting & {
  readonly name: string;
  /** how many numbers it takes from the series it is judged by */
  readonly freedom: number;
};

/** The mean of the methods that were nearest so far. */
export const SEVERAL_METHODS = "several methods";

/**
 * Routes from a series' own history: each method that the history allows, and the mean of those that were nearest.
 *
 * @param series of at least one value
 * @param steps over how many the methods are compared
 * @returns best first, the mean of the nearest at the front
 * @throws RangeError when there is no value
 */
export function ownRoutes(series: Series, steps: number): Route[] {
  const { members, runnersUp } = chosenForecast(series, steps);
  const routes = [...members, ...runnersUp].map(
    ({ name, freedom, forecaster }): Route => ({
      name,
      freedom,
      forecast: forecaster.forecast,
      forecastAfter: forecaster.forecastAfter,
    }),
  );
  if (members.length < 2) return routes;
  return [meanRoute(SEVERAL_METHODS, routes.slice(0, members.length)), ...routes];
}

/**
 * The mean of some routes as a route.
 *
 * @param name what to call it
 * @param routes at least one
 * @throws RangeError when there is none
 */
export function meanRoute(name: string, routes: readonly Route[]): Route {
  const freedom = routes.reduce((sum, route) => sum + route.freedom, 0) / Math.max(1, routes.length);
  return { name, freedom, ...combined(routes, "mean") };
}
