import { shopForecast } from "#lib/forecast/shop/shop-forecast";
import type { SubjectForecast } from "#lib/forecast/shop/subject-forecast";
import type { CushionStyle } from "#lib/packing/recipe-version";
import type { Day } from "#lib/units/day";
import type { Database } from "../client";
import { forecastInputs } from "./forecast-inputs";
import type { ForecastSubject } from "./forecast-parts";
import { forecastRows } from "./forecast-rows";
import { forecastOn, forecastPlace } from "./forecasts";

/** What is supposed. */
export type WhatIf = {
  /** percent more parcels than expected; below 0 for fewer */
  readonly parcelsPercent: number;
  /** an item type packed in another style from now on */
  readonly recipe: { readonly itemTypeId: string; readonly style: CushionStyle } | null;
};

/**
 * The forecast of a subject as it would be if something were different. Nothing of it is kept.
 *
 * @param db the database
 * @param today the day of the forecast
 * @param subject the shop, an item type or a supply
 * @param change what is supposed
 * @returns null before the shop is set up, and where the subject would not be used
 */
export async function whatIf(
  db: Database,
  today: Day,
  { kind, id }: ForecastSubject,
  { parcelsPercent, recipe }: WhatIf,
): Promise<SubjectForecast | null> {
  const forecast = await forecastOn(db, today);
  if (forecast === null) return null;
  const times = 1 + parcelsPercent / 100;
  if (kind === "shop") return timesAsMany(forecast.parcels, times);
  if (kind === "item-type") return timesAsMany(forecast.itemTypes.get(id) ?? null, times);
  if (recipe === null) return timesAsMany(forecast.supplies.get(id) ?? null, times);
  return timesAsMany(await supplyWith(db, today, id, recipe), times);
}

async function supplyWith(
  db: Database,
  today: Day,
  id: string,
  recipe: NonNullable<WhatIf["recipe"]>,
): Promise<SubjectForecast | null> {
  const place = await forecastPlace(db, today);
  if (place === null) return null;
  const rows = await forecastRows(db, place.shop, place.span.until);
  const { history, supplies } = forecastInputs(rows, place.span, today, recipe);
  const histories = supplies.map((each) => each.history);
  const supply = histories.find((each) => each.id === id);
  return supply === undefined ? null : (shopForecast(history, histories).supply(supply)?.coming ?? null);
}

function timesAsMany(forecast: SubjectForecast | null, times: number): SubjectForecast | null {
  if (forecast === null) return null;
  const { firstWeek, perWeek } = forecast.path;
  return { ...forecast, path: { firstWeek, perWeek: perWeek.map((use) => use * times) } };
}
