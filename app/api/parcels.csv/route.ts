import { Readable } from "node:stream";
import { stringify } from "csv-stringify";
import type { NextRequest } from "next/server";
import { type Database, database } from "#prisma/client";
import type { ParcelFilter } from "#prisma/records/parcel-filter";
import { type ParcelPage, parcelsOf } from "#prisma/records/parcel-lists";
import { parcelMaterials } from "#prisma/records/parcel-materials";
import { replacementPrices } from "#prisma/records/replacement-prices";
import { type Shop, shopOf } from "#prisma/records/shop";
import { filterProblems } from "../../parcels/filter-problems";
import { problemsAnswer } from "../../parcels/parcel-answer";
import { parcelCsvCells, parcelCsvHeader } from "../../parcels/parcel-csv-rows";
import { parcelFilterFrom } from "../../parcels/parcel-filter-from";
import { NO_SHOP } from "../asked-shop-day";

/** Parcels read at a time: no year of them stands in memory as a whole. */
const PARCELS_PER_READ = 500;

/**
 * Parcels as CSV (RFC 4180, UTF-8), newest first, one row a parcel: `GET /api/parcels.csv` with the parameters of the
 * list of parcels. What can't be read is refused, so that no file holds more than was asked for.
 */
export async function GET(request: NextRequest): Promise<Response> {
  const query = Object.fromEntries(request.nextUrl.searchParams);
  const problems = filterProblems(query);
  if (problems.length > 0) {
    const answer = problemsAnswer(problems);
    return Response.json(answer.body, { status: answer.status });
  }
  const db = await database();
  const shop = await shopOf(db);
  if (shop === null) return Response.json(NO_SHOP, { status: 404 });
  const { before: _page, ...filter } = parcelFilterFrom(query);
  const cells = stringify({ record_delimiter: "windows", escape_formulas: true });
  const csv = Readable.from(parcelRows(db, shop, filter)).compose(cells);
  return new Response(Readable.toWeb(csv) as ReadableStream<Uint8Array>, {
    headers: {
      "content-type": "text/csv; charset=utf-8",
      "content-disposition": 'attachment; filename="parcels.csv"',
      "cache-control": "no-store",
    },
  });
}

async function* parcelRows(db: Database, shop: Shop, filter: ParcelFilter): AsyncGenerator<string[]> {
  const prices = await replacementPrices(db);
  yield parcelCsvHeader(shop);
  let page: ParcelPage = { ...filter, limit: PARCELS_PER_READ };
  for (;;) {
    const parcels = await parcelsOf(db, page);
    const materials = await parcelMaterials(
      db,
      parcels.map(({ id }) => id),
    );
    for (const parcel of parcels) {
      yield parcelCsvCells({ parcel, taken: materials.get(parcel.id) ?? [], prices }, shop);
    }
    const last = parcels.at(-1);
    if (last === undefined || parcels.length < PARCELS_PER_READ) return;
    page = { ...page, before: last.id };
  }
}
