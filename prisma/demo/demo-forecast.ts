import type { PlannedEvent } from "#lib/forecast/planned-event";
import type { SupplyForecast } from "#lib/forecast/shop/subject-forecast";
import { leadingItemType } from "#lib/packing/leading-item-type";
import type { RecipeVersion } from "#lib/packing/recipe-version";
import { amount } from "#lib/units/amount";
import type { Day } from "#lib/units/day";
import type { DemoCalendar } from "#prisma/demo/demo-calendar";
import type { DemoParcel } from "#prisma/demo/demo-parcels";
import { DEMO_OFFERS, DEMO_OTHER_OFFERS, DEMO_SHOP, DEMO_SUPPLIERS } from "#prisma/demo/demo-terms";
import type { DemoUse } from "#prisma/demo/demo-use";
import { forecastInputs, forecastSpan } from "#prisma/records/forecast-inputs";
import { forecastParts } from "#prisma/records/forecast-parts";
import type { ForecastRows, PackedRow, PieceSizes } from "#prisma/records/forecast-rows";
import { starterSupply } from "#prisma/starter/starter-supplies";

/** What the demo shop's forecast is made from, before anything of it is recorded. */
export type DemoForecastTerms = {
  readonly calendar: DemoCalendar;
  readonly parcels: readonly DemoParcel[];
  readonly recipes: readonly RecipeVersion[];
  readonly itemTypes: readonly { readonly id: string; readonly massMg: number | null }[];
  readonly events: readonly PlannedEvent[];
  readonly use: DemoUse;
  /** what counts find to be gone besides */
  readonly unrecorded: DemoUse;
};

/**
 * The forecast that the demo shop will have once its parcels are recorded.
 *
 * @param terms parcels, recipes and what was used
 * @returns by supply; one that is not used is not in it
 */
export function demoForecast(terms: DemoForecastTerms): Map<string, SupplyForecast> {
  const { calendar } = terms;
  const span = forecastSpan(
    { firstDay: calendar.firstDay, calendar: calendar.closed, shop: DEMO_SHOP },
    calendar.today,
  );
  const inputs = forecastInputs(rowsOf(terms, span.until), span, calendar.today);
  const made = new Map<string, SupplyForecast>();
  for (const part of forecastParts(inputs, span)) {
    if (part !== null && "correction" in part.coming) made.set(part.subject.id, part.coming);
  }
  return made;
}

function rowsOf(terms: DemoForecastTerms, until: Day): ForecastRows {
  const { calendar, recipes, itemTypes, events, use, unrecorded } = terms;
  const parcels = terms.parcels.filter(
    ({ body, fate }) => fate !== "void" && body.packedOn < until && !body.unusual,
  );
  return {
    shop: { ...DEMO_SHOP, guessedParcels: null },
    firstDay: calendar.firstDay,
    calendar: calendar.closed,
    events,
    itemTypes,
    recipes,
    packed: parcels.flatMap(packedRows).sort((a, b) => (a.day < b.day ? -1 : 1)),
    sizes: pieceSizes(parcels),
    supplies: DEMO_OFFERS.map(({ supplyId }) => ({
      id: supplyId,
      unit: starterSupply(supplyId).unit,
      useByDay: dayUse(use, supplyId, 1, until),
      countDifferences: dayUse(unrecorded, supplyId, -1, until),
      leadTimesDays: [...DEMO_OFFERS, ...DEMO_OTHER_OFFERS]
        .filter((offer) => offer.supplyId === supplyId)
        .flatMap((offer) => DEMO_SUPPLIERS.filter((each) => each.id === offer.supplierId))
        .map((supplier) => supplier.leadTimeDays),
    })),
  };
}

function packedRows({ body }: DemoParcel): PackedRow[] {
  const leading = leadingItemType(body.pieces);
  return body.pieces.map(({ itemTypeId, pieces }) => ({
    day: body.packedOn as Day,
    itemTypeId,
    style: body.style,
    cartonId: body.cartons[0]?.supplyId ?? "",
    parcels: itemTypeId === leading ? 1 : 0,
    pieces,
  }));
}

function pieceSizes(parcels: readonly DemoParcel[]): Map<string, PieceSizes> {
  const sizes = new Map<string, PieceSizes>();
  for (const { itemTypeId, pieces } of parcels.flatMap(({ body }) => body.pieces)) {
    const sum = sizes.get(itemTypeId) ?? { times: 0, pieces: 0, squares: 0 };
    sizes.set(itemTypeId, {
      times: sum.times + 1,
      pieces: sum.pieces + pieces,
      squares: sum.squares + pieces * pieces,
    });
  }
  return sizes;
}

function dayUse(use: DemoUse, supplyId: string, sign: 1 | -1, until: Day) {
  return [...(use.get(supplyId) ?? [])]
    .filter(([day]) => day < until)
    .map(([day, used]) => ({ day, amount: amount(sign * used) }))
    .sort((a, b) => (a.day < b.day ? -1 : 1));
}
