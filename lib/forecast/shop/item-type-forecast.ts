import { patternOfUse } from "#lib/forecast/pattern-of-use";
import { meanRoute, type Route } from "#lib/forecast/route";
import { chosenOutlook } from "#lib/forecast/shop/chosen-outlook";
import { STEPS } from "#lib/forecast/shop/coming-path";
import { newItemType } from "#lib/forecast/shop/new-item-type";
import { firstOrigin, plainestFirst } from "#lib/forecast/shop/plainest-first";
import { sharedRoute } from "#lib/forecast/shop/shared-route";
import type { ShopGround } from "#lib/forecast/shop/shop-ground";
import type { SubjectOutlook } from "#lib/forecast/shop/subject-forecast";
import { pooledDispersions, sumLooks } from "#lib/forecast/sum-looks";

/** Item types are looked back at over so many weeks, about a delivery and the week to the next check. */
const HORIZON = 3;
/** k of a sum of weeks where nothing could be looked back at; a guess, no source. */
const guessedDispersion = (step: number): number => 0.1 + 0.2 / step;

/** An item type's forecast, and the route for what is made from it. */
export type ItemTypeForecast = SubjectOutlook & {
  readonly id: string;
  readonly route: Route;
};

/**
 * Pieces of each item type in the coming weeks, once the shop has more than 8 full weeks: by the type's share of the
 * shop's trade, by its own history, or by the mean of both, as looking back says.
 *
 * @param ground the shop's ground
 * @param serviceLevel chance of the quantile that the routes are compared by
 * @returns one an item type, in the ground's order
 */
export function itemTypeForecasts(ground: ShopGround, serviceLevel: number): ItemTypeForecast[] {
  const pooled = pooledDispersions(
    ground.types.flatMap(({ pieces, piecesAtOnce, firstSold }, index) => {
      if (firstSold === null) return [];
      const looks = sumLooks(sharedRoute(ground, index), pieces, {
        firstOrigin: firstOrigin(pieces.length, firstSold),
        steps: STEPS,
      });
      return [{ perUse: piecesAtOnce, looks }];
    }),
    { steps: STEPS, otherwise: guessedDispersion },
  );
  return ground.types.map((_, index) => itemTypeForecast(ground, index, { pooled, serviceLevel }));
}

function itemTypeForecast(
  ground: ShopGround,
  index: number,
  { pooled, serviceLevel }: { readonly pooled: readonly number[]; readonly serviceLevel: number },
): ItemTypeForecast {
  const type = ground.types[index];
  if (type === undefined) throw new RangeError(`itemTypeForecast requires one of the types, got ${index}`);
  const { id, pieces, factors, comingFactors, firstSold } = type;
  const since = firstSold ?? pieces.length;
  const pattern = patternOfUse(pieces.slice(since));
  const fresh = newItemType(ground, index);
  const shared = sharedRoute(ground, index);
  const own =
    firstSold === null
      ? []
      : plainestFirst(pieces.slice(since), pattern, HORIZON).map((route) => startedLater(route, since));
  const { choice, outlook } = chosenOutlook({
    routes: fresh === null ? withOwn(shared, own) : [fresh.route],
    values: pieces,
    horizon: HORIZON,
    chance: serviceLevel,
    perUse: type.piecesAtOnce,
    whole: true,
    pooled,
    firstOrigin: firstOrigin(pieces.length, firstSold ?? 0),
    weeks: ground.weeks,
    factors,
    coming: ground.coming,
    comingFactors,
    pattern,
  });
  const weeksSeen = firstSold === null ? 0 : pieces.length - firstSold;
  const { guessedShare, likeId } = fresh ?? { guessedShare: 0, likeId: null };
  const coming = { ...outlook.coming, weeksSeen, guessedShare, likeId };
  return { id, route: choice.route, coming, past: outlook.past };
}

/** A route that has seen a series from a later week on, as one of the whole series: before that it says nothing. */
function startedLater(route: Route, start: number): Route {
  return {
    ...route,
    forecastAfter: (count, steps) =>
      count > start ? route.forecastAfter(count - start, steps) : new Array<number>(steps).fill(0),
  };
}

/** Share of the trade, its mean with the plainest own route, and the own routes. */
function withOwn(shared: Route, own: readonly Route[]): Route[] {
  const [plainest] = own;
  return plainest === undefined
    ? [shared]
    : [shared, meanRoute("share of the trade and own history", [shared, plainest]), ...own];
}
