import type { SupplyForecast } from "#lib/forecast/shop/subject-forecast";
import type { CheckRow } from "#lib/replenishment/check-row";
import { plainTerms } from "#lib/replenishment/lead-time/delivery-terms";
import { latenessBelief } from "#lib/replenishment/lead-time/lateness-belief";
import type { SupplierDelivery } from "#lib/replenishment/lead-time/supplier-delivery";
import type { CheckOffer } from "#lib/replenishment/suggested-packs";
import type { ShopTerms } from "#lib/replenishment/supply-outlook-input";
import { weeklyCheck } from "#lib/replenishment/weekly-check";
import { AMOUNT_PER_UNIT, type Amount, amount, amountOfUnits, unitsOf } from "#lib/units/amount";
import type { Day } from "#lib/units/day";
import { offerId } from "#prisma/demo/demo-buying";
import type { DemoCalendar } from "#prisma/demo/demo-calendar";
import {
  DEMO_IDLE_CARTON,
  DEMO_OFFERS,
  DEMO_OTHER_OFFERS,
  DEMO_SHOP,
  DEMO_SUPPLIERS,
  type DemoOffer,
} from "#prisma/demo/demo-terms";
import { starterSupply } from "#prisma/starter/starter-supplies";

/** On the shelf today, against the reorder point: a share of it, and weeks of use beside that. */
type Target = { readonly share: number; readonly weeks: number };

/** What makes this week's check worth reading; every other supply has plenty. */
const TARGETS: Readonly<Record<string, Target>> = {
  "packing-paper": { share: 0.45, weeks: 0 },
  "carton-8x8x14": { share: 0.6, weeks: 0 },
  "carton-12x12x8": { share: 1, weeks: -0.5 },
  "small-bubble": { share: 0.6, weeks: 0 },
  tissue: { share: 1, weeks: 3 },
  "carton-tape": { share: 1, weeks: 4 },
};
const PLENTY: Target = { share: 1, weeks: 6.5 };
const UNITS_OF_UNUSED = 25;

/**
 * Says how much of each supply the demo shop should have left, so that its weekly check shows something
 * of everything whatever day it is loaded on.
 *
 * @param calendar - the shop's days
 * @param forecast - expected use by supply
 * @returns amounts by supply, whole use units
 * @example demoTargets(calendar, forecast).get("packing-paper");
 */
export function demoTargets(
  calendar: DemoCalendar,
  forecast: ReadonlyMap<string, SupplyForecast>,
): Map<string, Amount> {
  const terms: ShopTerms = {
    weekStartsOn: DEMO_SHOP.weekStartsOn,
    reviewDays: DEMO_SHOP.reviewDays,
    goal: { kind: "cycles", level: DEMO_SHOP.servicePerMille / 1000 },
    coverWeeks: DEMO_SHOP.coverWeeks,
    closed: calendar.closed,
    currency: DEMO_SHOP.currency,
    minorDigits: DEMO_SHOP.minorDigits,
  };
  const inputs = DEMO_OFFERS.map((offer) => ({
    supplyId: offer.supplyId,
    name: offer.supplyId,
    unit: starterSupply(offer.supplyId).unit,
    onHand: amount(0),
    countedOn: calendar.lastDay,
    onOrder: [],
    useByDay: [],
    firstDay: calendar.firstDay,
    forecast: forecast.get(offer.supplyId) ?? null,
    goal: null,
    offers: [offer, ...DEMO_OTHER_OFFERS.filter((other) => other.supplyId === offer.supplyId)].map((each) =>
      checkOffer(each, calendar.today),
    ),
  }));
  const { rows } = weeklyCheck(inputs, terms, calendar.today);
  return new Map(rows.map((row) => [row.supplyId, target(row)]));
}

function target(row: CheckRow): Amount {
  if (row.supplyId === DEMO_IDLE_CARTON || row.reorderPoint === null || row.usePerWeek === null) {
    return amountOfUnits(UNITS_OF_UNUSED);
  }
  const { share, weeks } = TARGETS[row.supplyId] ?? PLENTY;
  const units = unitsOf(row.reorderPoint) * share + unitsOf(row.usePerWeek) * weeks;
  return amount(Math.max(1, Math.floor(units)) * AMOUNT_PER_UNIT);
}

function checkOffer(offer: DemoOffer, today: Day): CheckOffer {
  const supplier = DEMO_SUPPLIERS.find((each) => each.id === offer.supplierId);
  return {
    offerId: offerId(offer),
    supplierId: offer.supplierId,
    supplierName: supplier?.name ?? "",
    delivery: deliveryOf(supplier?.leadTimeDays ?? 0, today),
    pack: offer.pack,
    packAmount: amount(offer.units * AMOUNT_PER_UNIT),
    priceMinor: offer.priceMinor,
    breaks: offer.breaks,
    breakKind: "all-units",
    volumeMl: null,
  };
}

function deliveryOf(promisedDays: number, today: Day): SupplierDelivery {
  return {
    terms: plainTerms(promisedDays),
    belief: latenessBelief([], { promisedDays, orderedOn: today }),
  };
}
