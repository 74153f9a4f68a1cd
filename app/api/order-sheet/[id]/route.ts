import { stringify } from "csv-stringify/sync";
import { database } from "#prisma/client";
import { purchaseOf } from "#prisma/records/purchase-orders";
import { shopOf } from "#prisma/records/shop";
import { offersOf } from "#prisma/records/suppliers";
import { sheetRows } from "../../../buying/sheet-rows";
import { NO_SHOP } from "../../asked-shop-day";

type SheetContext = { readonly params: Promise<{ readonly id: string }> };

/** The lines of an order as CSV (RFC 4180): `GET /api/order-sheet/ID`, or `ID.csv`. */
export async function GET(_request: Request, { params }: SheetContext): Promise<Response> {
  const id = decodeURIComponent((await params).id).replace(/\.csv$/, "");
  const db = await database();
  const [shop, order, offers] = await Promise.all([shopOf(db), purchaseOf(db, id), offersOf(db)]);
  if (shop === null) return Response.json(NO_SHOP, { status: 404 });
  if (order === null) return Response.json({ kind: "unknown-order", id }, { status: 404 });
  const rows = sheetRows(order, new Map(offers.map((offer) => [offer.id, offer])), shop);
  const csv = stringify(rows, { record_delimiter: "windows", escape_formulas: true });
  return new Response(csv, {
    headers: {
      "content-type": "text/csv; charset=utf-8",
      "content-disposition": `attachment; filename="order-${order.placedOn}.csv"`,
      "cache-control": "no-store",
    },
  });
}
