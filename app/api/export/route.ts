import { Readable } from "node:stream";
import { instantOfTime, shopDay } from "#lib/units/instant";
import { database, databaseFile } from "#prisma/client";
import { exportArchive } from "#prisma/records/export-archive";
import { shopOf } from "#prisma/records/shop";

/** Every table as CSV in one archive: `GET /api/export`. */
export async function GET(): Promise<Response> {
  const shop = await shopOf(await database());
  const today = shopDay(instantOfTime(Date.now()), shop?.timeZone ?? "UTC");
  return new Response(Readable.toWeb(exportArchive(databaseFile())) as ReadableStream<Uint8Array>, {
    headers: {
      "content-type": "application/zip",
      "content-disposition": `attachment; filename="wadding-tables-${today}.zip"`,
      "cache-control": "no-store",
    },
  });
}
