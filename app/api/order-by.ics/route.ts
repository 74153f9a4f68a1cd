import { calendarText } from "#lib/purchasing/calendar";
import { instantOfTime } from "#lib/units/instant";
import { openPurchaseLines } from "#prisma/records/purchases";
import { suppliesOf } from "#prisma/records/supplies";
import { weeklyCheckOn } from "#prisma/records/weekly-checks";
import { buyingEvents } from "../../buying/buying-events";
import { askedShopDay, NO_SHOP } from "../asked-shop-day";

/** Order-by days and expected deliveries as a calendar (RFC 5545): `GET /api/order-by.ics`. */
export async function GET(request: Request): Promise<Response> {
  const asked = await askedShopDay(request);
  if (asked instanceof Response) return asked;
  const { db, today } = asked;
  const [check, openLines, supplies] = await Promise.all([
    weeklyCheckOn(db, today),
    openPurchaseLines(db),
    suppliesOf(db, { retired: true }),
  ]);
  if (check === null) return Response.json(NO_SHOP, { status: 404 });
  const byId = new Map(supplies.map((supply) => [supply.id, supply]));
  const text = calendarText({
    name: "Packing supplies",
    writtenAt: instantOfTime(Date.now()),
    events: buyingEvents({ check, openLines, supplies: byId }),
  });
  return new Response(text, {
    headers: {
      "content-type": "text/calendar; charset=utf-8",
      "content-disposition": 'inline; filename="order-by.ics"',
      "cache-control": "no-store",
    },
  });
}
