import { instantOfTime, shopDay } from "#lib/units/instant";
import { database } from "#prisma/client";
import { forecastOn, type KeptForecast } from "#prisma/records/forecasts";
import { shopOf } from "#prisma/records/shop";
import { askedDay } from "../../this-week/asked-day";

/**
 * The forecast as JSON: `GET /api/forecast?today=2026-11-25`. Parcels of the shop, pieces of each item type, use of each
 * supply in its use unit, for each coming week. What is not kept yet, or is stale, is worked out first: the server asks
 * this of itself now and then, so that a screen finds the forecast ready.
 */
export async function GET(request: Request): Promise<Response> {
  const asked = askedDay(new URL(request.url).searchParams.get("today"));
  if (asked.kind === "unreadable") {
    return Response.json(
      { kind: "unreadable-day", field: "today", typed: asked.text, form: "YYYY-MM-DD" },
      { status: 400 },
    );
  }
  const db = await database();
  const shop = await shopOf(db);
  if (shop === null) return Response.json({ kind: "no-shop" }, { status: 404 });
  const today = asked.kind === "day" ? asked.day : shopDay(instantOfTime(Date.now()), shop.timeZone);
  const forecast = await forecastOn(db, today);
  return forecast === null
    ? Response.json({ kind: "no-shop" }, { status: 404 })
    : Response.json(forecastBody(forecast));
}

function forecastBody(forecast: KeptForecast) {
  return {
    ...forecast,
    itemTypes: Object.fromEntries(forecast.itemTypes),
    supplies: Object.fromEntries(forecast.supplies),
  };
}
