import type { Route } from "#lib/forecast/route";
import type { ShopGround } from "#lib/forecast/shop/shop-ground";
import { cardUse, type SupplySeries } from "#lib/forecast/shop/supply-series";

/** Name of the route over item types and recipes. */
export const BY_RECIPES = "pieces by their recipes";

/** What a week says of how true the recipes are fades by so much with every week that passes. A guess, no source. */
const DISCOUNT = 0.93;
/** Belief that the recipes are right weighs as much as so many weeks, and fades like them. A guess, no source. */
const WEEKS_OF_BELIEF = 8;

/**
 * Route of a supply over what takes it: the expected pieces of each item type times what today's recipes take for a
 * piece, times how much more or less than the recipes say was really used.
 *
 * @param series the supply's series
 * @param shop the shop's ground and the expected pieces of each item type
 * @returns null where no recipe takes the supply
 */
export function recipeRoute(
  series: SupplySeries,
  { ground, typeRoutes }: { readonly ground: ShopGround; readonly typeRoutes: readonly Route[] },
): Route | null {
  const { bill, values, start } = series;
  if (!bill.some((amount) => amount > 0)) return null;
  const takes = (type: number): boolean => (bill[type] ?? 0) > 0;
  const byCard = cardUse(bill, ground);
  const taken = (pieces: readonly (readonly number[])[], steps: number): number[] =>
    Array.from({ length: steps }, (_, step) =>
      bill.reduce((sum, amount, type) => sum + amount * Math.max(0, pieces[type]?.[step] ?? 0), 0),
    );
  const ratioAfter = (count: number): number =>
    usedOverCard(values.slice(0, count), byCard.slice(start, start + count));
  const times = (ratio: number, expected: readonly number[]): number[] =>
    expected.map((each) => ratio * each);
  return {
    name: BY_RECIPES,
    freedom: 1,
    forecast: (steps) =>
      times(
        ratioAfter(values.length),
        taken(
          typeRoutes.map((route, type) => (takes(type) ? route.forecast(steps) : [])),
          steps,
        ),
      ),
    forecastAfter: (count, steps) =>
      times(
        ratioAfter(count),
        taken(
          typeRoutes.map((route, type) => (takes(type) ? route.forecastAfter(start + count, steps) : [])),
          steps,
        ),
      ),
  };
}

/**
 * How much was used for what the recipes say, newer weeks weighing more, drawn towards 1 while they are few.
 *
 * @param used use a week, oldest first
 * @param byCard what the recipes say of the same weeks
 * @returns 1 without a week
 * @example usedOverCard([], []) // 1
 */
export function usedOverCard(used: readonly number[], byCard: readonly number[]): number {
  const card = discountedSum(byCard);
  if (card <= 0) return 1;
  const faded = WEEKS_OF_BELIEF * DISCOUNT ** byCard.length;
  const belief = (faded * card) / discountedSum(byCard.map(() => 1));
  return (discountedSum(used) + belief) / (card + belief);
}

function discountedSum(values: readonly number[]): number {
  return values.reduce((sum, value) => sum * DISCOUNT + value, 0);
}
