import { AMOUNT_PER_UNIT, amount } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { PLAIN_SUPPLY } from "#prisma/records/plain-supply";
import type { OrderLine, PurchaseOrder } from "#prisma/records/purchase-orders";
import type { Shop } from "#prisma/records/shop";
import type { Offer } from "#prisma/records/suppliers";
import type { Supply } from "#prisma/records/supplies";

export const units = (n: number) => amount(n * AMOUNT_PER_UNIT);

export const SHOP: Shop = {
  name: "Sandpiper Pottery",
  timeZone: "UTC",
  currency: "USD",
  minorDigits: 2,
  weekStartsOn: 1,
  measures: "imperial",
  reviewDays: 7,
  servicePerMille: 950,
  coverWeeks: 8,
  defaultStyle: "paper",
  guessedParcels: null,
  goal: "cycles",
  longestCoverWeeks: 26,
  holdingPerMille: 200,
  orderCostMinor: 0,
  weekLimitMinor: null,
  roomMl: null,
  roomTyped: null,
  promisePerMille: 900,
  habits: null,
};

export const BUBBLE: Supply = {
  ...PLAIN_SUPPLY,
  id: "bubble",
  name: "Small bubble",
  kind: "bubble",
  useUnit: "foot",
};
export const PAPER: Supply = {
  ...PLAIN_SUPPLY,
  id: "paper",
  name: "Packing paper",
  kind: "paper",
  useUnit: "sheet",
};

export const OFFER: Offer = {
  id: "roll",
  supplyId: "bubble",
  supplierId: "north",
  pack: "roll of 188 ft",
  packAmount: units(188),
  packTyped: "188 ft",
  priceMinor: 2_600,
  breakKind: "all-units",
  volumeMl: null,
  volumeTyped: null,
  soldOut: false,
  mostPacksAMonth: null,
  retired: false,
  breaks: [],
};

/** Four rolls of bubble at 26.00, all of them on their way. */
export function orderLine(changes: Partial<OrderLine> = {}): OrderLine {
  return {
    id: "line",
    supplyId: "bubble",
    supply: "Small bubble",
    unit: "foot",
    offerId: "roll",
    pack: "roll of 188 ft",
    offerRetired: false,
    packs: 4,
    packAmount: units(188),
    priceMinor: 2_600,
    expectedOn: day("2026-03-09"),
    open: { lineId: "line", packs: 4, expectedOn: day("2026-03-09") },
    closedAs: null,
    closedOn: null,
    arrivals: [],
    ...changes,
  };
}

export function order(changes: Partial<PurchaseOrder> = {}): PurchaseOrder {
  return {
    id: "order",
    supplierId: "north",
    supplierName: "Invented supplier",
    status: "placed",
    placedOn: day("2026-03-02"),
    placedAt: null,
    deliveryMinor: 895,
    note: null,
    lines: [orderLine()],
    ...changes,
  };
}
