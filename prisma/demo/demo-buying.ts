import { AMOUNT_PER_UNIT, amount } from "#lib/units/amount";
import { addDays, type Day } from "#lib/units/day";
import type { DemoCalendar, demoClock } from "#prisma/demo/demo-calendar";
import { type DemoEvent, wantOutcome } from "#prisma/demo/demo-event";
import type { DemoDelivery } from "#prisma/demo/demo-stock-plan";
import { DEMO_SHOP, DEMO_SUPPLIERS, type DemoOffer } from "#prisma/demo/demo-terms";
import type { Random } from "#prisma/demo/seeded-random";
import { draftPurchase } from "#prisma/records/purchase-drafts";
import { type PurchaseBody, placePurchase } from "#prisma/records/purchases";
import { type ReceiptBody, recordReceipt } from "#prisma/records/receipts";

const MORNING = 8 * 60;
const EVENING = 17 * 60;
const BEFORE_THE_RISE = 0.92;
const SHARE_LATE = 0.2;
const LATEST_DAYS = 4;
/** Boxes of tape that were ordered, how many came, and at which price: dearer than the offer says. */
const PART = { ordered: 4, came: 2, priceMinor: 1_240 };
const PART_ORDERED_DAYS_AGO = 14;
const PART_CAME_DAYS_AGO = 6;
const REST_LATE_DAYS = 2;

type Clock = ReturnType<typeof demoClock>;

/** The id under which an offer is saved. */
export function offerId(offer: DemoOffer): string {
  return `${offer.supplierId}-${offer.supplyId}`;
}

/** Price of a pack on a day, minor units: before the rise, and from so many packs on. */
export function demoPrice(offer: DemoOffer, packs: number, on: Day, calendar: DemoCalendar): number {
  const reached = offer.breaks.findLast((row) => row.fromPacks <= packs);
  const price = reached?.priceMinor ?? offer.priceMinor;
  return on < calendar.priceRiseDay ? Math.round(price * BEFORE_THE_RISE) : price;
}

/**
 * Records the orders behind the deliveries, and the deliveries: one order and one receipt for all that a
 * supplier brings on a day. Some come some days late.
 *
 * @param random - where lateness comes from
 * @param calendar - the shop's days
 * @param deliveries - in any order
 * @param clock - from `demoClock`
 * @returns the events
 * @example buyingEvents(random, calendar, plan.deliveries, clock);
 */
export function buyingEvents(
  random: Random,
  calendar: DemoCalendar,
  deliveries: readonly DemoDelivery[],
  clock: Clock,
): DemoEvent[] {
  const groups = new Map<string, DemoDelivery[]>();
  for (const delivery of deliveries) {
    const key = `${delivery.on} ${delivery.offer.supplierId}`;
    groups.set(key, [...(groups.get(key) ?? []), delivery]);
  }
  return [...groups.values()].flatMap((group) => {
    const late = random() < SHARE_LATE ? 1 + Math.floor(random() * LATEST_DAYS) : 0;
    const first = group[0];
    if (first === undefined) return [];
    const placedOn = addDays(first.on, -late - leadTimeDays(first.offer));
    const order = purchaseBody(calendar, group, placedOn);
    return [purchaseEvent(order, clock), receiptEvent(calendar, group, order, clock)];
  });
}

/** An order with a supplier that is still on its way. */
export function openPurchaseEvent(
  calendar: DemoCalendar,
  wanted: { readonly offer: DemoOffer; readonly packs: number; readonly placedOn: Day },
  clock: Clock,
): DemoEvent {
  const on = addDays(wanted.placedOn, leadTimeDays(wanted.offer));
  return purchaseEvent(purchaseBody(calendar, [{ ...wanted, on }], wanted.placedOn), clock);
}

/**
 * An order of which part came, dearer than it was ordered, and whose rest is late; and one that is only written down.
 *
 * @param calendar - the shop's days
 * @param offers - the pack of which part came, and those of the draft with their packs
 * @param clock - from `demoClock`
 * @returns the events
 */
export function unfinishedOrders(
  calendar: DemoCalendar,
  offers: { readonly late: DemoOffer; readonly draft: readonly (readonly [DemoOffer, number])[] },
  clock: Clock,
): DemoEvent[] {
  const placedOn = addDays(calendar.today, -PART_ORDERED_DAYS_AGO);
  const ordered = [{ offer: offers.late, packs: PART.ordered, on: placedOn }];
  const order = purchaseBody(calendar, ordered, placedOn, "part");
  const cameOn = addDays(calendar.today, -PART_CAME_DAYS_AGO);
  const came = partReceipt(calendar, order, cameOn);
  const group = offers.draft.map(([offer, packs]) => ({ offer, packs, on: calendar.lastDay }));
  const draft = { ...purchaseBody(calendar, group, calendar.lastDay, "draft"), deliveryMinor: 0 };
  return [
    purchaseEvent(order, clock),
    {
      at: clock(cameOn, MORNING),
      record: async (db, by) => wantOutcome(await recordReceipt(db, came, by), ["received"]),
    },
    {
      at: clock(calendar.lastDay, EVENING),
      record: async (db, by) => wantOutcome(await draftPurchase(db, draft, by), ["written"]),
    },
  ];
}

function partReceipt(calendar: DemoCalendar, order: PurchaseBody, on: Day): ReceiptBody {
  const id = `demo-receipt-part-${on}`;
  const lines = order.lines.map(({ supplyId, packAmount, ...line }) => ({
    id: `${id}-${supplyId}`,
    supplyId,
    purchaseLineId: line.id,
    packs: PART.came,
    packAmount,
    packTyped: "box of 6 rolls",
    priceMinor: PART.priceMinor,
  }));
  const expectedOn = addDays(calendar.today, -REST_LATE_DAYS);
  const restStillComes = order.lines.map((line) => ({
    purchaseLineId: line.id,
    packs: PART.ordered - PART.came,
    expectedOn,
  }));
  return { ...receiptHead(id, order.supplierId, on), kind: "paid", lines, restStillComes };
}

/** The first packs of everything, bought over the counter on the day before the first parcel. */
export function firstPacksEvent(
  calendar: DemoCalendar,
  offers: readonly DemoOffer[],
  clock: Clock,
): DemoEvent[] {
  const on = addDays(calendar.firstDay, -1);
  return DEMO_SUPPLIERS.flatMap((supplier) => {
    const group = offers
      .filter((offer) => offer.supplierId === supplier.id)
      .map((offer) => ({ offer, on, packs: 1 }));
    return group.length === 0 ? [] : [receiptEvent(calendar, group, null, clock)];
  });
}

/** Clean paper kept from what the studio itself was sent. */
export function savedPaperEvent(on: Day, units: number, clock: Clock): DemoEvent {
  const supplyId = "packing-paper";
  const id = `demo-saved-${on}`;
  const packAmount = amount(units * AMOUNT_PER_UNIT);
  const line = {
    id: `${id}-1`,
    supplyId,
    purchaseLineId: null,
    packs: 1,
    packAmount,
    packTyped: `${units} sheets`,
  };
  const body = {
    ...receiptHead(id, null, on),
    kind: "saved" as const,
    lines: [{ ...line, priceMinor: null }],
  };
  return {
    at: clock(on, MORNING),
    record: async (db, by) => wantOutcome(await recordReceipt(db, body, by), ["received"]),
  };
}

function leadTimeDays(offer: DemoOffer): number {
  return DEMO_SUPPLIERS.find((supplier) => supplier.id === offer.supplierId)?.leadTimeDays ?? 0;
}

function purchaseBody(
  calendar: DemoCalendar,
  group: readonly DemoDelivery[],
  placedOn: Day,
  name = `${group[0]?.offer.supplierId}-${group[0]?.on}`,
): PurchaseBody {
  const supplierId = group[0]?.offer.supplierId ?? "";
  const id = `demo-order-${name}`;
  const lines = group.map(({ offer, packs }) => ({
    id: `${id}-${offer.supplyId}`,
    supplyId: offer.supplyId,
    offerId: offerId(offer),
    packs,
    packAmount: amount(offer.units * AMOUNT_PER_UNIT),
    priceMinor: demoPrice(offer, packs, placedOn, calendar),
    expectedOn: addDays(placedOn, leadTimeDays(offer)),
  }));
  return { id, supplierId, placedOn, note: null, lines };
}

function purchaseEvent(body: PurchaseBody, clock: Clock): DemoEvent {
  return {
    at: clock(body.placedOn as Day, EVENING),
    record: async (db, by) => wantOutcome(await placePurchase(db, body, by), ["placed"]),
  };
}

function receiptEvent(
  calendar: DemoCalendar,
  group: readonly DemoDelivery[],
  order: PurchaseBody | null,
  clock: Clock,
): DemoEvent {
  const on = group[0]?.on ?? calendar.firstDay;
  const supplierId = group[0]?.offer.supplierId ?? null;
  const supplier = DEMO_SUPPLIERS.find((each) => each.id === supplierId);
  const id = `demo-receipt-${supplierId}-${on}`;
  const lines = group.map(({ offer, packs }) => ({
    id: `${id}-${offer.supplyId}`,
    supplyId: offer.supplyId,
    purchaseLineId: order?.lines.find((line) => line.supplyId === offer.supplyId)?.id ?? null,
    packs,
    packAmount: amount(offer.units * AMOUNT_PER_UNIT),
    packTyped: offer.pack,
    priceMinor: demoPrice(offer, packs, order === null ? on : (order.placedOn as Day), calendar),
  }));
  const goods = lines.reduce((sum, line) => sum + line.packs * line.priceMinor, 0);
  const free = supplier?.freeDeliveryMinor ?? Number.POSITIVE_INFINITY;
  const deliveryMinor = goods >= free ? 0 : (supplier?.deliveryMinor ?? 0);
  const body = { ...receiptHead(id, supplierId, on), kind: "paid" as const, deliveryMinor, lines };
  return {
    at: clock(on, MORNING),
    record: async (db, by) => wantOutcome(await recordReceipt(db, body, by), ["received"]),
  };
}

function receiptHead(id: string, supplierId: string | null, receivedOn: Day) {
  const { currency } = DEMO_SHOP;
  const terms = { currency, rateMillionths: 1_000_000, taxIncluded: true, taxMinor: 0, deliveryMinor: 0 };
  return { id, supplierId, receivedOn, note: null, ...terms };
}
