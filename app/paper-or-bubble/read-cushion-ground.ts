import { closedCalendar } from "#lib/forecast/open-days";
import { expectedUse } from "#lib/forecast/use-path";
import { unitsOf } from "#lib/units/amount";
import { addDays, type Day, day } from "#lib/units/day";
import { cartonSettingsOf } from "#prisma/records/carton-terms";
import { closedSpansOf } from "#prisma/records/closed-spans";
import { cushionTermsOf } from "#prisma/records/cushion-terms";
import { forecastOn } from "#prisma/records/forecasts";
import { habitsOf } from "#prisma/records/habits";
import { type ItemType, itemTypesOf } from "#prisma/records/item-types";
import { knownWeightsOn } from "#prisma/records/known-weights";
import { parcelCountsOf } from "#prisma/records/parcel-lists";
import { rateCardsOf } from "#prisma/records/rate-cards";
import { recipesOf } from "#prisma/records/recipes";
import { rememberedUntilWritten } from "#prisma/records/remembered";
import { sentKinds } from "#prisma/records/sent-kinds";
import { type Offer, offersOf } from "#prisma/records/suppliers";
import { suppliesOf } from "#prisma/records/supplies";
import { zonesOf } from "#prisma/records/zones";
import type { ShopNow } from "../_parts/shop-now";
import { outsideSizes } from "../cartons/outside-sizes";
import { supplyTerms } from "../recipes/supply-terms";
import type { CushionGround } from "./cushion-ground";

const DAYS_OF_ZONES = 182;
/** Days that the look back reaches, today counted. */
export const PAST_DAYS = 90;
const DAYS_A_WEEK = 7;
const ML_PER_LITRE = 1_000;

/**
 * All that paper and bubble are compared with, as the shop stands now.
 *
 * @param shopNow the open database, the shop and its day
 * @returns kept in memory until anything is written; not to be changed
 */
export async function readCushionGround(shopNow: ShopNow): Promise<CushionGround> {
  const { db, today } = shopNow;
  return rememberedUntilWritten(db, JSON.stringify(["paper-or-bubble", today]), () => readAnew(shopNow));
}

async function readAnew({ db, shop, today }: ShopNow): Promise<CushionGround> {
  const from = addDays(today, 1 - PAST_DAYS);
  const [supplies, itemTypes, recipes, weights, cards, counts, zones, habits, settings, said, sent, offers] =
    await Promise.all([
      suppliesOf(db, { retired: true }),
      itemTypesOf(db, { retired: true }),
      recipesOf(db),
      knownWeightsOn(db, today),
      rateCardsOf(db, shop),
      parcelCountsOf(db, { from: addDays(today, -DAYS_OF_ZONES), to: today }),
      zonesOf(db),
      habitsOf(db),
      cartonSettingsOf(db),
      cushionTermsOf(db),
      sentKinds(db, { from, to: today }),
      offersOf(db),
    ]);
  const prices = await supplyTerms(db, supplies);
  const { bulgeUm, hourMinor } = settings.settings;
  const sizes = outsideSizes(supplies, bulgeUm, habits.boardPoundsPerSquareFoot);
  return {
    today,
    supplies,
    itemTypes,
    zones,
    cards,
    zoneCounts: counts,
    offers,
    weeks: shop.coverWeeks,
    expectedPieces: await expectedPieces({ db, today, weeks: shop.coverWeeks }, itemTypes),
    sent,
    packing: {
      today,
      recipes,
      pieceMasses: new Map(itemTypes.map(({ id, massMg }) => [id, massMg])),
      supplyMasses: prices.masses,
      weights,
      sizeOf: (cartonId) => sizes.get(cartonId) ?? null,
    },
    book: prices.book,
    replacement: prices.replacement,
    litres: litresOf(offers),
    hourMinor,
    said,
  };
}

/** Pieces expected of each item type from today on. */
async function expectedPieces(
  { db, today, weeks }: { readonly db: ShopNow["db"]; readonly today: Day; readonly weeks: number },
  itemTypes: readonly ItemType[],
): Promise<ReadonlyMap<string, number>> {
  const [kept, spans] = await Promise.all([forecastOn(db, today), closedSpansOf(db)]);
  const calendar = closedCalendar(
    spans.map(({ fromDay, toDay }) => ({ fromDay: day(fromDay), toDay: day(toDay) })),
  );
  const until = addDays(today, weeks * DAYS_A_WEEK);
  return new Map(
    itemTypes.flatMap(({ id, retired }) => {
      const forecast = kept?.itemTypes.get(id);
      if (forecast === undefined || retired) return [];
      return [[id, expectedUse(forecast.path, { from: today, until }, calendar)] as const];
    }),
  );
}

/** Litres of a use unit by the offer that takes least room; supplies whose room nobody wrote down are not in it. */
function litresOf(offers: readonly Offer[]): ReadonlyMap<string, number> {
  const litres = new Map<string, number>();
  for (const { supplyId, volumeMl, packAmount } of offers) {
    if (volumeMl === null) continue;
    const each = volumeMl / ML_PER_LITRE / unitsOf(packAmount);
    litres.set(supplyId, Math.min(each, litres.get(supplyId) ?? each));
  }
  return litres;
}
