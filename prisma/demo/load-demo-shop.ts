import { amount } from "#lib/units/amount";
import { addDays, type Day } from "#lib/units/day";
import type { Instant } from "#lib/units/instant";
import type { Database } from "#prisma/client";
import {
  buyingEvents,
  firstPacksEvent,
  openPurchaseEvent,
  savedPaperEvent,
  unfinishedOrders,
} from "#prisma/demo/demo-buying";
import { type DemoCalendar, daysFrom, demoCalendar, demoClock } from "#prisma/demo/demo-calendar";
import {
  countDays,
  countEvent,
  demoSpoilage,
  spoilageEvent,
  unrecordedUse,
} from "#prisma/demo/demo-counting";
import type { DemoEvent } from "#prisma/demo/demo-event";
import { type DemoForecastTerms, demoForecast } from "#prisma/demo/demo-forecast";
import { parcelEvents, settledParcels } from "#prisma/demo/demo-parcel-events";
import { type DemoParcel, demoParcels } from "#prisma/demo/demo-parcels";
import { demoStockPlan } from "#prisma/demo/demo-stock-plan";
import { demoTargets } from "#prisma/demo/demo-targets";
import { DEMO_NEVER_COUNTED, DEMO_OFFERS, type DemoOffer } from "#prisma/demo/demo-terms";
import { addUse, DEMO_RETURNED, type DemoUse, demoUse } from "#prisma/demo/demo-use";
import { fullerParcels } from "#prisma/demo/fuller-parcels";
import { recordEvents } from "#prisma/demo/record-events";
import { saveDemoTerms } from "#prisma/demo/save-demo-terms";
import { type Random, seededRandom } from "#prisma/demo/seeded-random";
import { weighedParcel } from "#prisma/demo/weighed-parcel";
import { itemTypesOf } from "#prisma/records/item-types";
import { plannedEventsOf } from "#prisma/records/planned-events";
import { recipesOf } from "#prisma/records/recipes";
import { proveRollUps } from "#prisma/records/roll-ups";
import { suppliesOf } from "#prisma/records/supplies";

const SEED = 20_261_125;
const DEFAULT_TIME_ZONE = "America/New_York";
const SAVED_SHEETS = 18;
const DAYS_BETWEEN_SAVED = 61;
const NOON = 12 * 60;

/** When the demo shop is loaded, and what makes it the same each time. */
export type DemoTerms = {
  readonly today: Day;
  /** Instant of saving the shop's terms; noon of today if left out. */
  readonly now?: Instant;
  readonly timeZone?: string;
  readonly random?: Random;
};

/**
 * Loads an invented studio into an empty database: about 18 months of parcels that end yesterday, with
 * what was bought, counted, spoilt and put right. The same day gives the same shop.
 *
 * @param db - an empty, migrated database
 * @param terms - the day to end on, and where chances come from
 * @returns how many parcels were recorded
 * @throws RangeError if a record is refused, or if the roll-ups do not equal the ledger in the end
 * @example await loadDemoShop(db, { today: day("2026-11-25") });
 */
export async function loadDemoShop(db: Database, terms: DemoTerms): Promise<{ readonly parcels: number }> {
  const { random = seededRandom(SEED), timeZone = DEFAULT_TIME_ZONE, today } = terms;
  const calendar = demoCalendar(today, timeZone);
  const clock = demoClock(timeZone);
  await saveDemoTerms(db, calendar, terms.now ?? clock(today, NOON));
  const [recipes, itemTypes, events] = await Promise.all([
    recipesOf(db),
    itemTypesOf(db),
    plannedEventsOf(db),
  ]);
  const parcels = await weighedParcels(db, random, { calendar, recipes, itemTypes });
  await recordEvents(db, [
    ...parcels.flatMap((parcel) => parcelEvents(parcel, clock)),
    ...stockEvents(random, { calendar, parcels, recipes, itemTypes, events }, clock),
  ]);
  const proof = await proveRollUps(db);
  if (!proof.equal) {
    throw new RangeError(
      `loadDemoShop requires roll-ups equal to the ledger, got ${proof.differences.join("; ")}`,
    );
  }
  return { parcels: parcels.length };
}

async function weighedParcels(
  db: Database,
  random: Random,
  { calendar, recipes, itemTypes }: Pick<DemoHistory, "calendar" | "recipes" | "itemTypes">,
): Promise<DemoParcel[]> {
  const supplies = await suppliesOf(db);
  const masses = {
    pieces: new Map(itemTypes.map((type) => [type.id, type.massMg ?? 0])),
    supplies: new Map(supplies.map((supply) => [supply.id, supply.massMg ?? 0])),
  };
  const parcels = fullerParcels(demoParcels(random, calendar, recipes), recipes);
  return settledParcels(parcels, calendar).map((parcel) => ({
    ...parcel,
    body: weighedParcel(random, parcel.body, masses),
  }));
}

type DemoHistory = Omit<DemoForecastTerms, "use" | "unrecorded">;

function stockEvents(random: Random, history: DemoHistory, clock: ReturnType<typeof demoClock>): DemoEvent[] {
  const { calendar, parcels } = history;
  const days = daysFrom(calendar.firstDay, calendar.lastDay);
  const spoilt = demoSpoilage(random, calendar, days);
  const recorded = demoUse(parcels, spoilt);
  const counted = DEMO_OFFERS.filter((offer) => offer.supplyId !== DEMO_NEVER_COUNTED);
  const counts = counted.flatMap((offer) => countDays(calendar, offer.supplyId));
  const unrecorded: DemoUse = new Map();
  for (const count of counts)
    addUse(unrecorded, count.supplyId, count.on, unrecordedUse(random, recorded, count));
  const saved = days.filter((_, index) => index % DAYS_BETWEEN_SAVED === DAYS_BETWEEN_SAVED - 1);
  const gone = shelfUse(parcels, recorded, unrecorded, saved);
  const targets = demoTargets(calendar, demoForecast({ ...history, use: recorded, unrecorded }));
  const plans = counted.map((offer) =>
    demoStockPlan(calendar, gone, offer, targets.get(offer.supplyId) ?? amount(0)),
  );
  const dayBefore = addDays(calendar.firstDay, -1);
  return [
    ...firstPacksEvent(calendar, DEMO_OFFERS, clock),
    ...plans.map((plan) =>
      countEvent({ supplyId: plan.supplyId, on: dayBefore, amount: plan.opening }, clock),
    ),
    ...buyingEvents(
      random,
      calendar,
      plans.flatMap((plan) => plan.deliveries),
      clock,
    ),
    ...openPurchases(calendar, clock),
    ...saved.map((on) => savedPaperEvent(on, SAVED_SHEETS, clock)),
    ...spoilt.map((each) => spoilageEvent(each, clock)),
    ...counts.map(({ supplyId, on }) => {
      const shelf = plans.find((plan) => plan.supplyId === supplyId)?.shelf.get(on);
      return countEvent({ supplyId, on, amount: shelf ?? amount(0) }, clock);
    }),
  ];
}

/** What really left the shelf: recorded or not, less what came back and what was saved. */
function shelfUse(
  parcels: readonly DemoParcel[],
  recorded: DemoUse,
  unrecorded: DemoUse,
  saved: readonly Day[],
): DemoUse {
  const gone: DemoUse = new Map([...recorded].map(([supplyId, days]) => [supplyId, new Map(days)]));
  for (const [supplyId, days] of unrecorded) {
    for (const [on, more] of days) addUse(gone, supplyId, on, more);
  }
  for (const on of saved) addUse(gone, "packing-paper", on, amount(-SAVED_SHEETS * 12_000));
  for (const { body } of parcels.filter((parcel) => parcel.fate === "returned")) {
    const on = addDays(body.packedOn as Day, DEMO_RETURNED.afterDays);
    addUse(gone, DEMO_RETURNED.supplyId, on, amount(-DEMO_RETURNED.units * 12_000));
  }
  return gone;
}

/** Small bubble is on its way, tape came in part and its rest is late, paper is only written down. */
function openPurchases(calendar: DemoCalendar, clock: ReturnType<typeof demoClock>): DemoEvent[] {
  const bubble = demoOffer("small-bubble");
  const draft = [[demoOffer("packing-paper"), 3] as const, [demoOffer("tissue"), 1] as const];
  return [
    openPurchaseEvent(calendar, { offer: bubble, packs: 4, placedOn: addDays(calendar.today, -3) }, clock),
    ...unfinishedOrders(calendar, { late: demoOffer(DEMO_NEVER_COUNTED), draft }, clock),
  ];
}

function demoOffer(supplyId: string): DemoOffer {
  const offer = DEMO_OFFERS.find((each) => each.supplyId === supplyId);
  if (offer === undefined) throw new RangeError(`the demo shop requires an offer of ${supplyId}, got none`);
  return offer;
}
