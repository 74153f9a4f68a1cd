import { stringify } from "csv-stringify/sync";
import { cardRows } from "#lib/postage/card-rows/card-rows";
import { database } from "#prisma/client";
import { rateCardsOf } from "#prisma/records/rate-cards";
import { shopOf } from "#prisma/records/shop";
import { zonesOf } from "#prisma/records/zones";
import { withZoneNames } from "../../postage/rate-card-form";
import { NO_SHOP } from "../asked-shop-day";

/** All rate cards in use as CSV (RFC 4180, UTF-8), as they are imported: `GET /api/rate-cards.csv`. */
export async function GET(): Promise<Response> {
  const db = await database();
  const shop = await shopOf(db);
  if (shop === null) return Response.json(NO_SHOP, { status: 404 });
  const [cards, zones] = await Promise.all([rateCardsOf(db, shop), zonesOf(db, { retired: true })]);
  const rows = cardRows(cards.map((card) => withZoneNames(card, zones)));
  return new Response(stringify(rows, { record_delimiter: "windows", escape_formulas: true }), {
    headers: {
      "content-type": "text/csv; charset=utf-8",
      "content-disposition": 'attachment; filename="rate-cards.csv"',
      "cache-control": "no-store",
    },
  });
}
