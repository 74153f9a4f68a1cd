import { closedCalendar } from "#lib/forecast/open-days";
import type { SubjectForecast } from "#lib/forecast/shop/subject-forecast";
import { sumQuantile } from "#lib/forecast/sum-spread";
import type { RecipeVersion } from "#lib/packing/recipe-version";
import { amount } from "#lib/units/amount";
import { addDays, type Day, day } from "#lib/units/day";
import { forecastInputs } from "#prisma/records/forecast-inputs";
import { forecastParts } from "#prisma/records/forecast-parts";
import type { ForecastRows, PackedRow, PieceSizes } from "#prisma/records/forecast-rows";
import {
  type GiftwareRow,
  type GiftwareShop,
  giftwareRows,
  giftwareShop,
  giftwareUse,
  twelfths,
} from "./giftware-ledger";
import { FIRST_WEEK, QUESTION } from "./giftware-weeks";

const DAYS_A_WEEK = 7;
const PARTS_A_TWELFTH = 1_000;

/** What the program would have said after some weeks: the sum that is not exceeded, by item type and by supply. */
export type GiftwareSaid = {
  readonly itemTypes: ReadonlyMap<string, number>;
  readonly supplies: ReadonlyMap<string, number>;
};

/**
 * What the program would have said of the giftware shop after each number of weeks, by the same code that the weekly
 * check's forecasts are made with. As the comparison asks, the closed week counts as a week without a sale.
 *
 * @returns for a number of weeks seen, the sums over the question's weeks that are not exceeded with its chance
 */
export function giftwareForecasts(): (weeksSeen: number) => GiftwareSaid {
  const shop = giftwareShop();
  const orders = ordersOf(giftwareRows());
  const made = new Map<number, GiftwareSaid>();
  return (weeksSeen) => {
    const known = made.get(weeksSeen) ?? forecastAfter(shop, orders, weeksSeen);
    made.set(weeksSeen, known);
    return known;
  };
}

function forecastAfter(shop: GiftwareShop, orders: readonly Order[], weeksSeen: number): GiftwareSaid {
  const until = addDays(FIRST_WEEK, weeksSeen * DAYS_A_WEEK);
  const weeks = Array.from({ length: weeksSeen }, (_, week) => ({
    weekStart: addDays(FIRST_WEEK, week * DAYS_A_WEEK),
    nextWeekStart: addDays(FIRST_WEEK, (week + 1) * DAYS_A_WEEK),
    closed: false,
    partial: false,
  }));
  const span = { until, weeks };
  const rows = rowsUntil(
    shop,
    orders.filter((order) => order.on < until),
  );
  const itemTypes = new Map<string, number>();
  const supplies = new Map<string, number>();
  for (const part of forecastParts(forecastInputs(rows, span, until), span)) {
    if (part?.subject.kind === "item-type") itemTypes.set(part.subject.id, enough(part.coming));
    if (part?.subject.kind === "supply") supplies.set(part.subject.id, enough(part.coming));
  }
  return { itemTypes, supplies };
}

function enough({ path, spread }: SubjectForecast): number {
  const mean = path.perWeek.slice(0, QUESTION.steps).reduce((sum, use) => sum + use, 0);
  return sumQuantile(spread, { mean, weeks: QUESTION.steps }, QUESTION.chance);
}

type Order = { readonly on: Day; readonly rows: readonly GiftwareRow[] };

function ordersOf(rows: readonly GiftwareRow[]): Order[] {
  const orders = new Map<string, GiftwareRow[]>();
  for (const row of rows) orders.set(row.order, [...(orders.get(row.order) ?? []), row]);
  return [...orders.values()]
    .map((each) => ({ on: day(each[0]?.on ?? ""), rows: each }))
    .sort((a, b) => (a.on < b.on ? -1 : 1));
}

function rowsUntil(shop: GiftwareShop, orders: readonly Order[]): ForecastRows {
  const uses = orders.map((order) => ({ on: order.on, use: giftwareUse(shop, order.rows, "9999") }));
  return {
    shop: {
      weekStartsOn: 1,
      reviewDays: DAYS_A_WEEK,
      servicePerMille: QUESTION.chance * 1_000,
      guessedParcels: null,
      defaultStyle: "paper",
    },
    firstDay: FIRST_WEEK,
    calendar: closedCalendar([]),
    events: [],
    itemTypes: shop.itemTypes.map(({ id }) => ({ id, massMg: null })),
    recipes: shop.itemTypes.flatMap(recipeVersions),
    packed: orders.flatMap((order) => packedRows(shop, order)),
    sizes: pieceSizes(orders),
    supplies: shop.supplies.map(({ id }) => ({
      id,
      unit: id.startsWith("carton-") && !id.endsWith("tape") ? "each" : "sheet",
      useByDay: uses.map(({ on, use }) => ({
        day: on,
        amount: amount((use.get(id) ?? 0) * PARTS_A_TWELFTH),
      })),
      countDifferences: [],
      leadTimesDays: [],
    })),
  };
}

function recipeVersions(type: GiftwareShop["itemTypes"][number]): RecipeVersion[] {
  return type.recipes.map((recipe, index) => ({
    id: `${type.id} ${index}`,
    itemTypeId: type.id,
    style: "paper",
    effectiveFrom: FIRST_WEEK,
    cartons: recipe.cartons.map(({ upTo, supply }) => ({ upTo, supplyId: supply })),
    steps: recipe.steps.map((step, position) => ({
      id: `${type.id} ${index} ${position}`,
      position,
      words: "",
      supplyId: step.supply,
      amount: amount(twelfths(step.amount) * PARTS_A_TWELFTH),
      typedValue: step.amount,
      typedUnit: "",
      per: step.per,
    })),
  }));
}

function packedRows(shop: GiftwareShop, { on, rows }: Order): PackedRow[] {
  const carton = shop.supplies.find(
    ({ id }) =>
      id.startsWith("carton-") && id !== "carton-tape" && (giftwareUse(shop, rows, "9999").get(id) ?? 0) > 0,
  );
  const most = Math.max(...rows.map((row) => row.pieces));
  const leading = rows.find((row) => row.pieces === most)?.type;
  return rows.map(({ type, pieces }) => ({
    day: on,
    itemTypeId: type,
    style: "paper",
    cartonId: carton?.id ?? "",
    parcels: type === leading ? 1 : 0,
    pieces,
  }));
}

function pieceSizes(orders: readonly Order[]): Map<string, PieceSizes> {
  const sizes = new Map<string, PieceSizes>();
  for (const { type, pieces } of orders.flatMap((order) => order.rows)) {
    const sum = sizes.get(type) ?? { times: 0, pieces: 0, squares: 0 };
    sizes.set(type, {
      times: sum.times + 1,
      pieces: sum.pieces + pieces,
      squares: sum.squares + pieces * pieces,
    });
  }
  return sizes;
}
