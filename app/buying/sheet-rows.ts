import type { PurchaseOrder } from "#prisma/records/purchase-orders";
import type { Shop } from "#prisma/records/shop";
import { orderTotal, type PricesById } from "./order-lines";
import { packWords } from "./order-sheet";

/**
 * An order as rows of a file: a line for each supply, then delivery and total. Money as plain numbers in the shop's
 * currency; an empty cell is not known.
 *
 * @param order its lines
 * @param prices of the offers in use
 * @param shop for its currency
 * @returns rows of cells, the header first
 */
export function sheetRows(order: PurchaseOrder, prices: PricesById, shop: Shop): string[][] {
  const total = orderTotal(order, prices);
  const money = (minor: number | null) =>
    minor === null ? "" : (minor / 10 ** shop.minorDigits).toFixed(shop.minorDigits);
  const head = [order.supplierName, order.placedOn];
  return [
    ["supplier", "day", "supply", "pack", "packs", "price", "sum", "currency"],
    ...order.lines.map((line, index) => [
      ...head,
      line.supply,
      packWords(line),
      String(line.packs),
      money(line.priceMinor),
      money(total.sums[index] ?? null),
      shop.currency,
    ]),
    [...head, "delivery", "", "", "", money(total.deliveryMinor), shop.currency],
    [...head, "total", "", "", "", money(total.totalMinor), shop.currency],
  ];
}
