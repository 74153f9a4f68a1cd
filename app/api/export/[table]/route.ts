import { Readable } from "node:stream";
import { database } from "#prisma/client";
import { exportTable, exportTables, isExportTable } from "#prisma/records/export";

type ExportContext = { readonly params: Promise<{ readonly table: string }> };

/** One table as CSV: `GET /api/export/Movement`, or `Movement.csv`. */
export async function GET(_request: Request, { params }: ExportContext): Promise<Response> {
  const table = (await params).table.replace(/\.csv$/, "");
  if (!isExportTable(table)) {
    return Response.json({ kind: "unknown-table", table, tables: exportTables }, { status: 404 });
  }
  const csv = exportTable(await database(), table);
  return new Response(Readable.toWeb(csv) as ReadableStream<Uint8Array>, {
    headers: {
      "content-type": "text/csv; charset=utf-8",
      "content-disposition": `attachment; filename="${table}.csv"`,
      "cache-control": "no-store",
    },
  });
}
