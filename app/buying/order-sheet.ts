import { formatAmount } from "#lib/units/amount-text";
import { formatDay } from "#lib/units/day-text";
import { formatMoney } from "#lib/units/money";
import type { PurchaseOrder } from "#prisma/records/purchase-orders";
import type { Shop } from "#prisma/records/shop";
import { orderTotal, type PricesById } from "./order-lines";

/** An order for reading, printing and sending: no name and no address in it but the supplier's name. */
export type OrderSheet = {
  readonly supplier: string;
  /** "Draft of Wed 25 Nov 2026" or "Ordered Wed 25 Nov 2026" */
  readonly head: string;
  readonly lines: readonly SheetLine[];
  readonly goods: string;
  readonly delivery: string;
  readonly total: string;
  /** what the total leaves out, or nothing */
  readonly note: string;
};

/** One line of a sheet, in words. */
export type SheetLine = {
  readonly supply: string;
  readonly pack: string;
  readonly packs: string;
  /** of a pack */
  readonly price: string;
  readonly sum: string;
};

/**
 * The sheet of an order.
 *
 * @param order its lines
 * @param prices of the offers in use
 * @param shop for its currency
 * @returns the sheet in words
 */
export function orderSheet(order: PurchaseOrder, prices: PricesById, shop: Shop): OrderSheet {
  const total = orderTotal(order, prices);
  const money = (minor: number) => formatMoney(minor, shop.currency, shop.minorDigits);
  const on = formatDay(order.placedOn, { weekday: true, year: true });
  return {
    supplier: order.supplierName,
    head: order.status === "draft" ? `Draft of ${on}` : `Ordered ${on}`,
    lines: order.lines.map((line, index) => ({
      supply: line.supply,
      pack: packWords(line),
      packs: String(line.packs),
      price: line.priceMinor === null ? "not known" : money(line.priceMinor),
      sum: sumWords(total.sums[index] ?? null, money),
    })),
    goods: money(total.goodsMinor),
    delivery: total.deliveryMinor === null ? "not known" : money(total.deliveryMinor),
    total: money(total.totalMinor),
    note: noteWords(total.withoutPrice, total.deliveryMinor === null),
  };
}

/** The offer's words for a pack, else what is in it. */
export function packWords(
  line: Pick<PurchaseOrder["lines"][number], "pack" | "packAmount" | "unit">,
): string {
  return line.pack ?? `pack of ${formatAmount(line.packAmount, line.unit)}`;
}

function sumWords(sum: number | null, money: (minor: number) => string): string {
  return sum === null ? "not known" : money(sum);
}

function noteWords(withoutPrice: number, isDeliveryUnknown: boolean): string {
  const missing = [
    withoutPrice === 0 ? "" : `${withoutPrice} ${withoutPrice === 1 ? "line" : "lines"} without a price`,
    isDeliveryUnknown ? "delivery" : "",
  ].filter((part) => part !== "");
  return missing.length === 0 ? "" : `The total leaves out: ${missing.join(" and ")}.`;
}

/**
 * A sheet as plain text, for a message to the supplier.
 *
 * @param sheet the sheet
 * @returns lines of text
 */
export function sheetText(sheet: OrderSheet): string {
  const lines = sheet.lines.map(
    (line) => `${line.packs} × ${line.supply}, ${line.pack}, at ${line.price}: ${line.sum}`,
  );
  return [
    sheet.supplier,
    sheet.head,
    "",
    ...lines,
    "",
    `Goods: ${sheet.goods}`,
    `Delivery: ${sheet.delivery}`,
    `Total: ${sheet.total}`,
    ...(sheet.note === "" ? [] : [sheet.note]),
  ].join("\n");
}
