import { shopForecast } from "#lib/forecast/shop/shop-forecast";
import type { ItemTypeHistory, ShopHistory, SupplyUseHistory } from "#lib/forecast/shop/shop-history";
import { addDays, day } from "#lib/units/day";
import { type Measurement, measurement } from "../../measurement";
import { chances } from "./chances";

const ITEM_TYPES = 20;
const SUPPLIES = 60;
const WEEKS = 104;
const DAYS_A_WEEK = 7;
const TARGET_SECONDS = 3;
const MS_PER_SECOND = 1_000;
const MICROS_PER_SECOND = 1_000_000;
const FIRST_DAY = day("2024-11-25");

/** Time to forecast a shop of 60 supplies and 20 item types after two years anew, from a cold start of the code. */
export function shopForecastSpeed(): Measurement[] {
  const { history, supplies } = generatedShop();
  const began = performance.now();
  const before = process.cpuUsage();
  const forecast = shopForecast(history, supplies);
  const made = supplies.map((supply) => forecast.supply(supply)).filter((each) => each !== null);
  const seconds = (performance.now() - began) / MS_PER_SECOND;
  const used = process.cpuUsage(before);
  const what = `a shop of ${made.length} supplies and ${forecast.itemTypes.length} item types, two years, anew`;
  return [
    measurement({
      area: "forecast",
      name: `${what} (by the clock)`,
      value: seconds,
      unit: "s",
      target: TARGET_SECONDS,
    }),
    measurement({
      area: "forecast",
      name: `${what} (processor time, with what compiles and tidies up beside)`,
      value: (used.user + used.system) / MICROS_PER_SECOND,
      unit: "s",
      target: null,
    }),
  ];
}

function generatedShop(): { readonly history: ShopHistory; readonly supplies: readonly SupplyUseHistory[] } {
  const chance = chances(1);
  const weeks = Array.from({ length: WEEKS }, (_, week) => ({
    weekStart: addDays(FIRST_DAY, week * DAYS_A_WEEK),
    nextWeekStart: addDays(FIRST_DAY, (week + 1) * DAYS_A_WEEK),
    closed: false,
    partial: false,
  }));
  const itemTypes = Array.from({ length: ITEM_TYPES }, (_, type): ItemTypeHistory => {
    const pieces = weeks.map(() => Math.round(chance() * (type + 1)));
    return {
      id: `type ${type}`,
      pieces,
      parcels: pieces.map((count) => Math.ceil(count / 2)),
      firstDays: { parcels: 0, pieces: 0 },
      piecesAtOnce: 2,
      massGrams: 100 * (type + 1),
    };
  });
  const supplies = Array.from({ length: SUPPLIES }, (_, supply): SupplyUseHistory => {
    const taking = itemTypes.filter((__, type) => (type + supply) % 4 === 0);
    const perPiece = new Map(taking.map(({ id }) => [id, 1 + chance()]));
    return {
      id: `supply ${supply}`,
      used: weeks.map((__, week) =>
        taking.reduce((sum, { id, pieces }) => sum + (perPiece.get(id) ?? 0) * (pieces[week] ?? 0), 0),
      ),
      firstDaysUsed: 0,
      perPiece,
      perUse: 3,
      whole: supply % 3 === 0,
      horizonWeeks: 1 + (supply % 4),
    };
  });
  const history: ShopHistory = {
    today: addDays(FIRST_DAY, WEEKS * DAYS_A_WEEK),
    weekStartsOn: 1,
    calendar: [],
    weeks,
    firstDays: 0,
    itemTypes,
    events: [],
    guessedParcels: null,
    serviceLevel: 0.95,
  };
  return { history, supplies };
}
