import { lineSum, type OfferPrices } from "#lib/purchasing/line-sum";
import type { PurchaseOrder } from "#prisma/records/purchase-orders";

/** What an order comes to. */
export type OrderTotal = {
  /** of each line in order, minor units; null where its price is not known */
  readonly sums: readonly (number | null)[];
  readonly goodsMinor: number;
  /** delivery as expected; null where it is not known */
  readonly deliveryMinor: number | null;
  readonly totalMinor: number;
  readonly withoutPrice: number;
};

/** An offer's prices by its id. */
export type PricesById = ReadonlyMap<string, OfferPrices>;

/**
 * What an order comes to as it was ordered: its lines and the delivery that is expected.
 *
 * @param order its lines and delivery
 * @param prices of the offers in use
 * @returns sums in minor units; what has no price is not in them
 */
export function orderTotal(
  order: Pick<PurchaseOrder, "lines" | "deliveryMinor">,
  prices: PricesById,
): OrderTotal {
  const sums = order.lines.map((line) =>
    lineSum(line, line.offerId === null ? null : (prices.get(line.offerId) ?? null)),
  );
  const goodsMinor = sums.reduce<number>((total, each) => total + (each ?? 0), 0);
  return {
    sums,
    goodsMinor,
    deliveryMinor: order.deliveryMinor,
    totalMinor: goodsMinor + (order.deliveryMinor ?? 0),
    withoutPrice: sums.filter((each) => each === null).length,
  };
}

/**
 * Delivery to expect of goods with a supplier: its charge, or none from its limit on.
 *
 * @param supplier its terms, minor units
 * @param goodsMinor goods together, minor units
 * @returns minor units
 */
export function expectedDelivery(
  supplier: { readonly deliveryMinor: number; readonly freeDeliveryMinor: number | null },
  goodsMinor: number,
): number {
  const isFree = supplier.freeDeliveryMinor !== null && goodsMinor >= supplier.freeDeliveryMinor;
  return isFree ? 0 : supplier.deliveryMinor;
}
