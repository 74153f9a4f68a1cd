import type { Day } from "#lib/units/day";
import { instantOfTime, shopDay } from "#lib/units/instant";
import { type Database, database } from "#prisma/client";
import { shopOf } from "#prisma/records/shop";
import { askedDay } from "../this-week/asked-day";

/** The answer where there is no shop yet. */
export const NO_SHOP = { kind: "no-shop" } as const;

/**
 * The day that a route is asked about, `?today=2026-11-25`, else the shop's own.
 *
 * @param request the request
 * @returns the open database and the day; or the answer, where the day can't be read or there is no shop
 */
export async function askedShopDay(
  request: Request,
): Promise<{ readonly db: Database; readonly today: Day } | Response> {
  const asked = askedDay(new URL(request.url).searchParams.get("today"));
  if (asked.kind === "unreadable") {
    const problem = { kind: "unreadable-day", field: "today", typed: asked.text, form: "YYYY-MM-DD" };
    return Response.json(problem, { status: 400 });
  }
  const db = await database();
  const shop = await shopOf(db);
  if (shop === null) return Response.json(NO_SHOP, { status: 404 });
  const today = asked.kind === "day" ? asked.day : shopDay(instantOfTime(Date.now()), shop.timeZone);
  return { db, today };
}
