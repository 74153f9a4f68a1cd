import type { PurchaseOrder } from "#prisma/records/purchase-orders";
import type { Supplier } from "#prisma/records/suppliers";
import { expectedDelivery, orderTotal, type PricesById } from "./order-lines";

/**
 * What to know before a draft is placed: the supplier's least order, and a delivery charge that is not what the supplier
 * takes for these goods.
 *
 * @param order the draft
 * @param supplier its terms, or null where it is no longer used
 * @param prices of the offers in use
 * @param money writes minor units
 * @returns sentences, none where all is well
 */
export function draftNotes(
  order: PurchaseOrder,
  supplier: Supplier | null,
  prices: PricesById,
  money: (minor: number) => string,
): string[] {
  if (order.lines.length === 0) return [];
  if (supplier === null)
    return [`${order.supplierName} is marked as no longer used. Check it before you order.`];
  const { goodsMinor, deliveryMinor, withoutPrice } = orderTotal(order, prices);
  const notes: string[] = [];
  const { leastOrderMinor } = supplier;
  if (leastOrderMinor !== null && goodsMinor < leastOrderMinor && withoutPrice === 0) {
    notes.push(
      `${supplier.name} takes orders from ${money(leastOrderMinor)}: ${money(leastOrderMinor - goodsMinor)} of goods are missing.`,
    );
  }
  const expected = expectedDelivery(supplier, goodsMinor);
  if (deliveryMinor !== null && deliveryMinor !== expected && withoutPrice === 0) {
    notes.push(
      `By its terms ${supplier.name} takes ${expected === 0 ? "nothing" : money(expected)} for delivering this; the draft says ${money(deliveryMinor)}.`,
    );
  }
  return notes;
}
