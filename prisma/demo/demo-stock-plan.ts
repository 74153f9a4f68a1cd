import { AMOUNT_PER_UNIT, type Amount, amount } from "#lib/units/amount";
import { addDays, type Day, weekday } from "#lib/units/day";
import { type DemoCalendar, daysFrom, packsOn } from "#prisma/demo/demo-calendar";
import { DEMO_SUPPLIERS, type DemoOffer } from "#prisma/demo/demo-terms";
import { type DemoUse, usedBetween } from "#prisma/demo/demo-use";

/** Packs of a supply that came in on a day. */
export type DemoDelivery = { readonly offer: DemoOffer; readonly on: Day; readonly packs: number };

/** How a supply was kept in stock: what came in, and what was on the shelf at the end of each day. */
export type DemoStockPlan = {
  readonly supplyId: string;
  readonly deliveries: readonly DemoDelivery[];
  readonly shelf: ReadonlyMap<Day, Amount>;
  /** On the shelf before the first parcel. */
  readonly opening: Amount;
};

/** An order lasts about so long, and comes while about so much is left. */
const DAYS_OF_COVER = 35;
const DAYS_IN_RESERVE = 10;
/** Nothing is ordered before the shop has worked for a while. */
const DAYS_BEFORE_FIRST_DELIVERY = 15;

/**
 * Plans the deliveries of a supply backwards from what should be on the shelf in the end, so that the
 * history fits its end whatever day the demo is loaded on.
 *
 * @param calendar - the shop's days
 * @param use - what left the shelf by supply and day
 * @param offer - the pack that the shop buys
 * @param end - on the shelf at the end of the last day
 * @returns deliveries, oldest first, and the shelf at the end of each day
 * @example demoStockPlan(calendar, use, offer, amountOfUnits(90)).shelf.get(calendar.lastDay); // amountOfUnits(90)
 */
export function demoStockPlan(
  calendar: DemoCalendar,
  use: DemoUse,
  offer: DemoOffer,
  end: Amount,
): DemoStockPlan {
  const pack = amount(offer.units * AMOUNT_PER_UNIT);
  const { supplyId } = offer;
  const earliest = addDays(calendar.firstDay, DAYS_BEFORE_FIRST_DELIVERY);
  const shelf = new Map<Day, Amount>();
  const deliveries: DemoDelivery[] = [];
  let left = end;
  for (const on of daysFrom(calendar.firstDay, calendar.lastDay).reverse()) {
    shelf.set(on, left);
    left = amount(left + usedBetween(use, supplyId, on, on));
    if (on < earliest || !deliversOn(calendar, offer.supplierId, on)) continue;
    const ahead = usedBetween(use, supplyId, on, addDays(on, DAYS_OF_COVER));
    const reserve = usedBetween(use, supplyId, on, addDays(on, DAYS_IN_RESERVE));
    const packs = Math.max(1, Math.round(ahead / pack));
    if (left - packs * pack >= reserve) {
      deliveries.push({ offer, on, packs });
      left = amount(left - packs * pack);
    }
  }
  return { supplyId, deliveries: deliveries.reverse(), shelf, opening: left };
}

function deliversOn(calendar: DemoCalendar, supplierId: string, on: Day): boolean {
  const supplier = DEMO_SUPPLIERS.find((each) => each.id === supplierId);
  return packsOn(calendar, on) && supplier?.deliversOn === weekday(on);
}
