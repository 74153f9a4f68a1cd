import { type Day, daysBetween, minDay } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import type { PurchaseOrder } from "#prisma/records/purchase-orders";
import { latenessWords } from "./expected-deliveries";

/**
 * The first line of an order's page: how far it is.
 *
 * @param order the order
 * @param today the shop's day
 * @returns a sentence
 */
export function orderFinding(order: PurchaseOrder, today: Day): string {
  const { status, supplierName, placedOn, placedAt } = order;
  const on = formatDay(placedOn, { weekday: true });
  const placed = `Ordered from ${supplierName} on ${on}${placedAt === null ? "" : ` at ${placedAt}`}`;
  switch (status) {
    case "draft":
      return `A draft to ${supplierName}, written ${on}: nothing of it is on order.`;
    case "placed":
      return `${placed}, ${expectedWords(order, today)}.`;
    case "partly received":
      return `${placed}: part of it came, the rest is ${expectedWords(order, today)}.`;
    case "received":
      return `${placed}: it came ${receivedWords(order)}.`;
    case "cancelled":
      return `${placed}, and cancelled.`;
    default:
      return status satisfies never;
  }
}

function expectedWords(order: PurchaseOrder, today: Day): string {
  const days = order.lines.flatMap((line) => (line.open === null ? [] : [line.open.expectedOn]));
  const [first, ...others] = days;
  if (first === undefined) return "not expected any more";
  const earliest = others.reduce(minDay, first);
  const late = daysBetween(earliest, today);
  if (late > 0) return `${latenessWords(late)}, due ${formatDay(earliest, { weekday: true })}`;
  return `expected ${formatDay(earliest, { weekday: true })}`;
}

function receivedWords(order: PurchaseOrder): string {
  const arrivals = order.lines.flatMap((line) =>
    line.arrivals.map((arrival) => ({
      on: arrival.receivedOn,
      late: daysBetween(line.expectedOn, arrival.receivedOn),
    })),
  );
  const [first, ...others] = arrivals;
  if (first === undefined) return "not at all";
  const last = others.reduce((a, b) => (b.on > a.on ? b : a), first);
  return `${formatDay(last.on, { weekday: true })}, ${latenessWords(last.late)}`;
}
