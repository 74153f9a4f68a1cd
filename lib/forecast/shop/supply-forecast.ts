import { patternOfUse } from "#lib/forecast/pattern-of-use";
import { meanRoute, type Route } from "#lib/forecast/route";
import { chosenOutlook } from "#lib/forecast/shop/chosen-outlook";
import { STEPS } from "#lib/forecast/shop/coming-path";
import { firstOrigin, plainestFirst } from "#lib/forecast/shop/plainest-first";
import { recipeRoute } from "#lib/forecast/shop/recipe-route";
import type { ShopGround } from "#lib/forecast/shop/shop-ground";
import type { SupplyUseHistory } from "#lib/forecast/shop/shop-history";
import type { SubjectOutlook } from "#lib/forecast/shop/subject-forecast";
import { supplySeries } from "#lib/forecast/shop/supply-series";
import { pooledDispersions, sumLooks } from "#lib/forecast/sum-looks";

/** Without use for so many weeks, and in no recipe of what is sold, a supply counts as not used. */
export const WEEKS_WITHOUT_USE = 26;
/** k of a sum of weeks where nothing could be looked back at; a guess, no source. */
const guessedDispersion = (step: number): number => 0.1 + 0.2 / step;

/** What all supplies of a shop have in common. */
export type SupplyGround = {
  readonly ground: ShopGround;
  /** expected pieces of each item type, in the ground's order */
  readonly typeRoutes: readonly Route[];
  readonly serviceLevel: number;
  /** k that all supplies together show for sums of 1, 2, 3, ... weeks */
  readonly pooled: readonly number[];
};

/**
 * What all supplies together show of how far forecasts by the recipes are off.
 *
 * @param supplies what the records know of each
 * @param shop the shop's ground, the item types' routes and the wanted chance
 */
export function supplyGround(
  supplies: readonly SupplyUseHistory[],
  shop: Omit<SupplyGround, "pooled">,
): SupplyGround {
  const series = supplies.map((supply) => supplySeries(supply, shop.ground));
  const pooled = pooledDispersions(
    series.flatMap((each) => {
      const route = recipeRoute(each, shop);
      if (route === null || each.values.length === 0) return [];
      const looks = sumLooks(route, each.values, {
        firstOrigin: firstOrigin(each.values.length),
        steps: STEPS,
      });
      return [{ looks, perUse: each.perUse }];
    }),
    { steps: STEPS, otherwise: guessedDispersion },
  );
  return { ...shop, pooled };
}

/**
 * Use of a supply in the coming weeks, once the shop has more than 8 full weeks: the pieces of each item type times
 * what today's recipes take, the supply's own history, or the mean of both, as looking back says.
 *
 * @param supply what the records know
 * @param shop what all supplies have in common
 * @returns null where it is not used: nothing in 26 weeks, and in no recipe of what is sold
 */
export function supplyForecast(supply: SupplyUseHistory, shop: SupplyGround): SubjectOutlook | null {
  const { ground, pooled, serviceLevel } = shop;
  const series = supplySeries(supply, ground);
  const byRecipes = recipeRoute(series, shop);
  const isUsed = series.values.slice(-WEEKS_WITHOUT_USE).some((value) => value > 0);
  if (!isUsed && (byRecipes === null || byRecipes.forecast(1).every((value) => value <= 0))) return null;
  const { values, perUse, factors, comingFactors, weeks } = series;
  const pattern = patternOfUse(values);
  const own =
    values.length === 0 || pattern === null ? [] : plainestFirst(values, pattern, supply.horizonWeeks);
  const horizon = Math.min(supply.horizonWeeks, STEPS);
  return chosenOutlook({
    routes: withOwn(byRecipes, own),
    values,
    horizon,
    chance: serviceLevel,
    perUse,
    whole: supply.whole,
    pooled,
    firstOrigin: firstOrigin(values.length),
    weeks,
    factors,
    coming: ground.coming,
    comingFactors,
    pattern,
  }).outlook;
}

/** The recipes' way, its mean with the plainest own route, and the own routes. */
function withOwn(byRecipes: Route | null, own: readonly Route[]): Route[] {
  const [plainest] = own;
  if (byRecipes === null) return [...own];
  return plainest === undefined
    ? [byRecipes]
    : [byRecipes, meanRoute("recipes and own history", [byRecipes, plainest]), ...own];
}
