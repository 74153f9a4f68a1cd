import { goodsCost } from "#lib/replenishment/order-quantity/price-steps";
import type {
  PolicyLine,
  ShopOffer,
  ShopSetting,
  ShopSupplier,
} from "#lib/replenishment/simulation/shop-setting";

/** An order to one supplier: its lines with what they cost, and the delivery. */
export type SupplierOrder = {
  readonly supplier: ShopSupplier;
  readonly lines: readonly { readonly offer: ShopOffer; readonly packs: number; readonly goods: number }[];
  readonly goods: number;
  readonly delivery: number;
};

/**
 * Puts the lines of a check into one order for each supplier, priced.
 *
 * @param setting suppliers and offers
 * @param lines offers with packs
 * @returns orders in the order of the suppliers
 * @throws RangeError when an offer is not known or comes twice, packs are not whole from 1, or a supplier's least value
 * is not reached: a way to order must know the terms
 * @example supplierOrders(setting, [{ offerId: "paper", packs: 2 }])
 */
export function supplierOrders(
  setting: Pick<ShopSetting, "suppliers" | "offers">,
  lines: readonly PolicyLine[],
): SupplierOrder[] {
  const priced = lines.map(({ offerId, packs }, index) => {
    const offer = setting.offers.find((each) => each.offerId === offerId);
    if (offer === undefined) throw new RangeError(`supplierOrders requires a known offer, got ${offerId}`);
    if (lines.findIndex((line) => line.offerId === offerId) < index) {
      throw new RangeError(`supplierOrders requires each offer once, got ${offerId} twice`);
    }
    if (!(Number.isSafeInteger(packs) && packs > 0)) {
      throw new RangeError(`supplierOrders requires whole packs from 1 of ${offerId}, got ${packs}`);
    }
    return { offer, packs, goods: goodsCost(offer.prices, packs) };
  });
  return setting.suppliers.flatMap((supplier) => {
    const own = priced.filter(({ offer }) => offer.supplierId === supplier.supplierId);
    if (own.length === 0) return [];
    const goods = own.reduce((sum, line) => sum + line.goods, 0);
    if (goods < (supplier.leastValue ?? 0)) {
      throw new RangeError(
        `supplierOrders requires goods of ${supplier.leastValue} from ${supplier.supplierId}, got ${goods}`,
      );
    }
    const { charge, freeFrom } = supplier.delivery;
    return [{ supplier, lines: own, goods, delivery: freeFrom !== null && goods >= freeFrom ? 0 : charge }];
  });
}
