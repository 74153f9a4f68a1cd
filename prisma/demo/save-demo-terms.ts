import { randomUUID } from "node:crypto";
import { AMOUNT_PER_UNIT, amount } from "#lib/units/amount";
import type { Instant } from "#lib/units/instant";
import { parseVolume } from "#lib/units/volume";
import type { Database } from "#prisma/client";
import { demoPrice, offerId } from "#prisma/demo/demo-buying";
import type { DemoCalendar } from "#prisma/demo/demo-calendar";
import { DEMO_PIECES } from "#prisma/demo/demo-pieces";
import { demoRateCards } from "#prisma/demo/demo-rate-card";
import {
  DEMO_EVENTS,
  DEMO_IDLE_CARTON,
  DEMO_ITEMS,
  DEMO_OFFERS,
  DEMO_OTHER_OFFERS,
  DEMO_SHOP,
  DEMO_SUPPLIERS,
  DEMO_ZONES,
  type DemoOffer,
} from "#prisma/demo/demo-terms";
import { saveClosedSpan } from "#prisma/records/closed-spans";
import { saveItemTypePiece } from "#prisma/records/item-type-piece";
import { itemTypesOf, saveItemType } from "#prisma/records/item-types";
import { savePlannedEvent } from "#prisma/records/planned-events";
import { saveRateCards } from "#prisma/records/rate-cards";
import { recipesOf, saveRecipe } from "#prisma/records/recipes";
import { saveShop } from "#prisma/records/shop";
import { type Offer, saveOffer, saveSupplier } from "#prisma/records/suppliers";
import { saveSupply, suppliesOf } from "#prisma/records/supplies";
import { saveZone } from "#prisma/records/zones";
import { copyStarter } from "#prisma/starter/copy-starter";
import { STARTER_SUPPLIES, starterSupply } from "#prisma/starter/starter-supplies";
import { supplyOfStarter } from "#prisma/starter/supply-of-starter";

/** As printed on the demo's cartons. */
const DEMO_STAMP = "32 ECT";

/**
 * Saves all of the demo shop that is no event: settings, zones, closed days, item types and recipes from
 * the starter, supplies, suppliers, offers and planned events.
 *
 * @param db - an empty, migrated database
 * @param calendar - the shop's days
 * @param now - the instant of recording
 * @example await saveDemoTerms(db, demoCalendar(today, "UTC"), now);
 */
export async function saveDemoTerms(db: Database, calendar: DemoCalendar, now: Instant): Promise<void> {
  await saveShop(db, { ...DEMO_SHOP, timeZone: calendar.timeZone });
  for (const [position, zone] of DEMO_ZONES.entries()) {
    await saveZone(db, { id: zone.id, name: zone.name, retired: false, position });
  }
  await saveRateCards(db, demoRateCards(calendar.firstDay, calendar.today), DEMO_SHOP);
  for (const span of calendar.closed) {
    await saveClosedSpan(db, { id: `demo-${span.fromDay}`, ...span, words: "Closed around New Year" });
  }
  await copyStarter(db, { itemTypeIds: DEMO_ITEMS.map((item) => item.id), day: calendar.firstDay, now });
  await saveItemNames(db);
  for (const [itemTypeId, piece] of Object.entries(DEMO_PIECES)) {
    await saveItemTypePiece(db, itemTypeId, piece);
  }
  await saveNewMugRecipe(db, calendar, now);
  const idle = starterSupply(DEMO_IDLE_CARTON);
  await saveSupply(db, supplyOfStarter(idle, STARTER_SUPPLIES.indexOf(idle)));
  await saveCartonStamps(db);
  await saveBuying(db, calendar);
  for (const { days, ...event } of DEMO_EVENTS) {
    await savePlannedEvent(db, { ...event, ...calendar[days] });
  }
}

async function saveItemNames(db: Database): Promise<void> {
  for (const type of await itemTypesOf(db)) {
    const name = DEMO_ITEMS.find((item) => item.id === type.id)?.name ?? type.name;
    if (name !== type.name) await saveItemType(db, { ...type, name });
  }
}

/** The mug's card says a sheet more since its counts kept coming out short. */
async function saveNewMugRecipe(db: Database, calendar: DemoCalendar, now: Instant): Promise<void> {
  const recipes = await recipesOf(db, { itemTypeIds: ["mug"] });
  const paper = recipes.find((recipe) => recipe.style === "paper");
  if (paper === undefined) throw new RangeError("saveDemoTerms requires the mug's paper recipe, got none");
  const last = paper.steps.findLast((step) => step.supplyId === "packing-paper");
  const steps = paper.steps.map((step) => {
    const more = amount(step.amount + (step === last ? AMOUNT_PER_UNIT : 0));
    const typedValue = step === last ? String(more / AMOUNT_PER_UNIT) : step.typedValue;
    return { ...step, id: randomUUID(), amount: more, typedValue };
  });
  const head = { id: randomUUID(), effectiveFrom: calendar.newRecipeDay, commonPractice: false };
  const note = "One sheet more at the top: the counts came out short.";
  await saveRecipe(db, { ...paper, ...head, note, steps }, now);
}

/** Suppliers, and their offers with the price from before the rise in their history. */
async function saveBuying(db: Database, calendar: DemoCalendar): Promise<void> {
  for (const { deliversOn: _deliversOn, ...supplier } of DEMO_SUPPLIERS) {
    await saveSupplier(db, { ...supplier, note: "Invented", retired: false });
  }
  for (const offer of [...DEMO_OFFERS, ...DEMO_OTHER_OFFERS]) {
    const row = {
      id: offerId(offer),
      supplyId: offer.supplyId,
      supplierId: offer.supplierId,
      pack: offer.pack,
      packAmount: amount(offer.units * AMOUNT_PER_UNIT),
      packTyped: offer.pack,
      retired: false,
      breaks: offer.breaks,
      ...roomOf(offer),
    };
    const before = demoPrice({ ...offer, breaks: [] }, 1, calendar.firstDay, calendar);
    await saveOffer(db, { ...row, priceMinor: before }, calendar.firstDay);
    await saveOffer(db, { ...row, priceMinor: offer.priceMinor }, calendar.priceRiseDay);
  }
}

function roomOf({ cubicFeet }: DemoOffer): Pick<Offer, "volumeMl" | "volumeTyped"> {
  const volumeTyped = cubicFeet === null ? null : `${cubicFeet} cu ft`;
  const read = volumeTyped === null ? null : parseVolume(volumeTyped, DEMO_SHOP.measures);
  return { volumeMl: read?.kind === "volume" ? read.ml : null, volumeTyped };
}

/** All of the demo's cartons bear the same stamp. */
async function saveCartonStamps(db: Database): Promise<void> {
  for (const supply of await suppliesOf(db)) {
    if (supply.kind === "carton") await saveSupply(db, { ...supply, rating: DEMO_STAMP, flutes: "C" });
  }
}
