import { costByKind, type TakenMaterial, type TwoCosts } from "#lib/packing/cost-by-kind";
import { minorOfCost, roundHalfEven, splitMinor } from "#lib/units/money";
import type { OrderParcels, SharedParcel } from "#prisma/records/order-parcels";

/** Minor units on both bases; `isWhole` is false where a price is not known, so that it costs more than that. */
export type OrderCost = {
  readonly cash: { readonly minor: number; readonly isWhole: boolean };
  readonly replacement: { readonly minor: number; readonly isWhole: boolean };
};

/** What packing an order cost: its share of this parcel, and of all parcels that it is in. */
export type OrderLine = {
  readonly reference: string;
  readonly parcels: number;
  readonly here: OrderCost;
  readonly inAll: OrderCost;
};

/**
 * What packing cost each order in a parcel. A parcel's cost is split by the shares of its orders so that they add up.
 *
 * @param orders the orders in the parcel, each with every parcel that it is in
 * @param parcelId the parcel looked at
 * @param materials what each of the parcels took
 * @param prices 1/10,000 minor unit a use unit, by supply
 * @returns in the order of the orders; those without a standing parcel are left out
 */
export function orderCosts(
  orders: readonly OrderParcels[],
  parcelId: string,
  materials: ReadonlyMap<string, readonly TakenMaterial[]>,
  prices: ReadonlyMap<string, number>,
): readonly OrderLine[] {
  return orders.flatMap(({ reference, parcels }) => {
    const costs = parcels.map((parcel) => ({
      isHere: parcel.parcelId === parcelId,
      cost: shareOf(parcel, costByKind(materials.get(parcel.parcelId) ?? [], prices).total),
    }));
    const here = costs.find(({ isHere }) => isHere)?.cost;
    if (here === undefined) return [];
    return [{ reference, parcels: parcels.length, here, inAll: sumOf(costs.map(({ cost }) => cost)) }];
  });
}

function shareOf({ shares, own }: SharedParcel, total: TwoCosts): OrderCost {
  const part = (basis: "cash" | "replacement") =>
    splitMinor(minorOfCost(total[basis], roundHalfEven), shares)[own] ?? 0;
  return {
    cash: { minor: part("cash"), isWhole: total.cashUnknown.length === 0 },
    replacement: { minor: part("replacement"), isWhole: total.replacementUnknown.length === 0 },
  };
}

function sumOf(costs: readonly OrderCost[]): OrderCost {
  const sum = (basis: "cash" | "replacement") => ({
    minor: costs.reduce((all, cost) => all + cost[basis].minor, 0),
    isWhole: costs.every((cost) => cost[basis].isWhole),
  });
  return { cash: sum("cash"), replacement: sum("replacement") };
}
