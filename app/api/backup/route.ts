import { randomUUID } from "node:crypto";
import { createReadStream, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Readable } from "node:stream";
import { instantOfTime, shopDay } from "#lib/units/instant";
import { backupDatabase } from "#prisma/backup";
import { database, databaseFile } from "#prisma/client";
import { shopOf } from "#prisma/records/shop";

/** The whole database as one file, as it was at one moment: `GET /api/backup`. */
export async function GET(): Promise<Response> {
  const shop = await shopOf(await database());
  const today = shopDay(instantOfTime(Date.now()), shop?.timeZone ?? "UTC");
  const copy = join(tmpdir(), `wadding-backup-${randomUUID()}.db`);
  const outcome = await backupDatabase(databaseFile(), copy);
  if (outcome.kind !== "backed-up") return Response.json(outcome, { status: 404 });
  const file = createReadStream(copy);
  file.once("close", () => rmSync(copy, { force: true }));
  return new Response(Readable.toWeb(file) as ReadableStream<Uint8Array>, {
    headers: {
      "content-type": "application/vnd.sqlite3",
      "content-length": String(statSync(copy).size),
      "content-disposition": `attachment; filename="wadding-${today}.db"`,
      "cache-control": "no-store",
    },
  });
}
