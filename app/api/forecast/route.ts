import { forecastOn, type KeptForecast } from "#prisma/records/forecasts";
import { askedShopDay, NO_SHOP } from "../asked-shop-day";

/**
 * The forecast as JSON: `GET /api/forecast?today=2026-11-25`. Parcels of the shop, pieces of each item type, use of each
 * supply in its use unit, for each coming week. What is not kept yet, or is stale, is worked out first: the server asks
 * this of itself now and then, so that a screen finds the forecast ready.
 */
export async function GET(request: Request): Promise<Response> {
  const asked = await askedShopDay(request);
  if (asked instanceof Response) return asked;
  const forecast = await forecastOn(asked.db, asked.today);
  return forecast === null ? Response.json(NO_SHOP, { status: 404 }) : Response.json(forecastBody(forecast));
}

function forecastBody(forecast: KeptForecast) {
  return {
    ...forecast,
    itemTypes: Object.fromEntries(forecast.itemTypes),
    supplies: Object.fromEntries(forecast.supplies),
  };
}
