import { type Day, daysBetween } from "#lib/units/day";
import type { OrderLine, PurchaseOrder } from "#prisma/records/purchase-orders";

/** What is expected of one order on one day. */
export type ExpectedDelivery = {
  readonly order: PurchaseOrder;
  readonly on: Day;
  readonly lines: readonly OrderLine[];
  /** days past the expected day; 0 where it is not late */
  readonly daysLate: number;
};

/** What came of one order on one day. */
export type PastDelivery = {
  readonly order: PurchaseOrder;
  readonly on: Day;
  readonly lines: readonly OrderLine[];
  /** days after the day first expected, of the latest line; below 0 it came early */
  readonly daysLate: number;
};

/**
 * Deliveries expected, the earliest first: what is open of each order, by its day.
 *
 * @param orders on order
 * @param today the shop's day
 * @returns a delivery for each order and day
 */
export function expectedDeliveries(orders: readonly PurchaseOrder[], today: Day): ExpectedDelivery[] {
  return orders
    .flatMap((order) => {
      const open = order.lines.flatMap((line) =>
        line.open === null ? [] : [{ line, on: line.open.expectedOn }],
      );
      return [...new Set(open.map(({ on }) => on))].map((on) => ({
        order,
        on,
        lines: open.filter((each) => each.on === on).map(({ line }) => line),
        daysLate: Math.max(0, daysBetween(on, today)),
      }));
    })
    .toSorted((a, b) => daysBetween(b.on, a.on));
}

/**
 * Deliveries that came, the latest first.
 *
 * @param orders with what came of them
 * @returns a delivery for each order and day
 */
export function pastDeliveries(orders: readonly PurchaseOrder[]): PastDelivery[] {
  return orders
    .flatMap((order) => {
      const days = order.lines.flatMap((line) => line.arrivals.map((arrival) => arrival.receivedOn));
      return [...new Set(days)].map((on) => {
        const lines = order.lines.filter((line) =>
          line.arrivals.some((arrival) => arrival.receivedOn === on),
        );
        const late = lines.map((line) => daysBetween(line.expectedOn, on));
        return { order, on, lines, daysLate: Math.max(...late) };
      });
    })
    .toSorted((a, b) => daysBetween(a.on, b.on));
}

/**
 * Lateness in words.
 *
 * @param days after the expected day
 * @returns "on its day", "2 days late", "1 day early"
 * @example latenessWords(2) // "2 days late"
 */
export function latenessWords(days: number): string {
  if (days === 0) return "on its day";
  const size = Math.abs(days);
  return `${size} ${size === 1 ? "day" : "days"} ${days > 0 ? "late" : "early"}`;
}
