import { FIRST_WEEKS, firstWeeks } from "#lib/forecast/shop/first-weeks";
import {
  type FirstWeeksGround,
  firstParcels,
  firstPieces,
  firstUse,
} from "#lib/forecast/shop/first-weeks-outlook";
import { itemTypeForecasts } from "#lib/forecast/shop/item-type-forecast";
import { parcelForecast } from "#lib/forecast/shop/parcel-forecast";
import { type ShopGround, shopGround } from "#lib/forecast/shop/shop-ground";
import type { ShopHistory, SupplyUseHistory } from "#lib/forecast/shop/shop-history";
import type { SubjectOutlook } from "#lib/forecast/shop/subject-forecast";
import { supplyForecast, supplyGround } from "#lib/forecast/shop/supply-forecast";

/** A forecast of a whole shop: parcels, pieces of each item type, and on demand each supply. */
export type ShopForecast = {
  readonly ground: ShopGround;
  /** parcels a week; null where there is neither a record nor a guess */
  readonly parcels: SubjectOutlook | null;
  /** pieces a week, in the order of the history; none where there is neither a record nor a guess */
  readonly itemTypes: readonly { readonly id: string; readonly outlook: SubjectOutlook }[];
  /** use of a supply that was given; null where it is not used */
  readonly supply: (supply: SupplyUseHistory) => SubjectOutlook | null;
};

/**
 * Forecast of a shop. With more than 8 full open weeks each subject's route is chosen by looking back; before that the
 * shop's rate is a belief that starts from the seller's guess and moves to the records.
 *
 * @param history what the records know
 * @param supplies all supplies: together they show how far forecasts are off
 * @param ground the history's ground, where the caller has it already
 * @returns parcels and item types at once; a supply is worked out when it is asked for, so that a caller can breathe
 * @throws RangeError when a history has not one number a week
 */
export function shopForecast(
  history: ShopHistory,
  supplies: readonly SupplyUseHistory[],
  ground: ShopGround = shopGround(history),
): ShopForecast {
  for (const supply of supplies) {
    if (supply.used.length !== history.weeks.length) {
      throw new RangeError(`shopForecast requires ${history.weeks.length} weeks of ${supply.id}`);
    }
  }
  return ground.weeks.length > FIRST_WEEKS
    ? lookedBack(history, ground, supplies)
    : fromFirstWeeks(history, ground);
}

function lookedBack(
  { serviceLevel }: ShopHistory,
  ground: ShopGround,
  supplies: readonly SupplyUseHistory[],
): ShopForecast {
  const types = ground.types.length === 0 ? [] : itemTypeForecasts(ground, serviceLevel);
  const shop = supplyGround(supplies, {
    ground,
    serviceLevel,
    typeRoutes: types.map(({ route }) => route),
  });
  return {
    ground,
    parcels: parcelForecast(ground, serviceLevel),
    itemTypes: types.map(({ id, coming, past }) => ({ id, outlook: { coming, past } })),
    supply: (supply) => supplyForecast(supply, shop),
  };
}

function fromFirstWeeks(history: ShopHistory, ground: ShopGround): ShopForecast {
  const parcels = ground.weeks.map((_, place) =>
    ground.types.reduce((sum, type) => sum + (type.parcels[place] ?? 0), 0),
  );
  const belief = firstWeeks(history, parcels);
  if (belief === null) return { ground, parcels: null, itemTypes: [], supply: () => null };
  const first: FirstWeeksGround = { ground, history, belief };
  const pieces = firstPieces(first);
  return {
    ground,
    parcels: firstParcels(first),
    itemTypes: ground.types.flatMap(({ id }, index) => {
      const outlook = pieces[index];
      return outlook === undefined ? [] : [{ id, outlook }];
    }),
    supply: (supply) => firstUse(supply, first),
  };
}
