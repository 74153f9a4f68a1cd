import type { Route } from "#lib/forecast/route";
import type { ShopGround } from "#lib/forecast/shop/shop-ground";

/** Name of the route by the shop's level and an item type's share in it. */
export const SHARE_OF_TRADE = "share of the trade";

/**
 * Route of an item type by the shop's level and its share: in a small shop the item types rise and fall together.
 *
 * @param ground the shop's ground
 * @param typeIndex place of the item type in it
 * @see `levelAndShare`
 */
export function sharedRoute(ground: ShopGround, typeIndex: number): Route {
  const said = (count: number, steps: number): number[] => {
    const { level, shares } = ground.levelAfter(count);
    return new Array<number>(steps).fill(level * (shares[typeIndex] ?? 0));
  };
  return {
    name: SHARE_OF_TRADE,
    freedom: 1,
    forecast: (steps) => said(ground.weeks.length, steps),
    forecastAfter: said,
  };
}
