import type { CalendarEvent } from "#lib/purchasing/calendar";
import type { CheckRow, WeeklyCheck } from "#lib/replenishment/weekly-check";
import { scaleAmount } from "#lib/units/amount";
import { formatAmount } from "#lib/units/amount-text";
import { day } from "#lib/units/day";
import type { UseUnit } from "#lib/units/use-unit";
import type { OpenPurchaseLine } from "#prisma/records/purchases";

/** What the calendar is made from. */
type BuyingDays = {
  readonly check: Pick<WeeklyCheck, "day" | "rows">;
  readonly openLines: readonly OpenPurchaseLine[];
  /** the supplies' names and use units by id */
  readonly supplies: ReadonlyMap<string, { readonly name: string; readonly useUnit: UseUnit }>;
};

/**
 * The days of buying for a calendar: by which day to order, and when deliveries are expected. A supply and an order line
 * keep their event, so that a calendar moves it instead of adding one; the rest of a part delivery keeps that of its line.
 *
 * @param days the weekly check, what is on order, and the supplies
 * @returns events, order-by days first
 */
export function buyingEvents({ check, openLines, supplies }: BuyingDays): CalendarEvent[] {
  const orderBy = check.rows.flatMap((row) => orderByEvent(row, check.day));
  const deliveries = openLines.map((line): CalendarEvent => {
    const supply = supplies.get(line.supplyId);
    const name = supply?.name ?? line.supplyId;
    const amount = formatAmount(scaleAmount(line.packAmount, line.packs), supply?.useUnit ?? "each");
    return {
      uid: `delivery-${line.id.replace(/(-rest)+$/, "")}@wadding`,
      on: day(line.expectedOn),
      summary: `${name} expected from ${line.supplierName}`,
      description: `${line.packs} ${line.packs === 1 ? "pack" : "packs"}, ${amount}. Ordered ${line.placedOn}.`,
    };
  });
  return [...orderBy, ...deliveries];
}

function orderByEvent(row: CheckRow, today: CalendarEvent["on"]): CalendarEvent[] {
  const asks =
    row.action === "order-today" || row.action === "order-this-week" || row.action === "order-later";
  if (!asks) return [];
  const on = row.action === "order-today" ? today : row.orderByDate;
  if (on === null) return [];
  return [
    {
      uid: `order-by-${row.supplyId}@wadding`,
      on,
      summary: `Order ${row.supply}`,
      description: row.sentence,
    },
  ];
}
