import { buffer, text } from "node:stream/consumers";
import { parse } from "csv-parse/sync";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { exportTable, exportTables } from "#prisma/records/export";
import { exportArchive } from "#prisma/records/export-archive";
import { recordParcel } from "#prisma/records/parcels";
import { saveZone } from "#prisma/records/zones";
import { readZip } from "./read-zip";
import { parcelBody, type ShopFixture, shopFixture } from "./shop-fixture";

const by = { device: "test", now: "2026-03-10T12:00:00.000Z" };

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
  for (const id of ["parcel-1", "parcel-2", "parcel-3"]) await recordParcel(shop.db, parcelBody(id), by);
});
afterEach(() => shop.close());

describe("export of all tables in one archive", () => {
  it("holds every table with the same rows as its own export", async () => {
    const files = readZip(await buffer(exportArchive(shop.file)));
    expect([...files.keys()]).toEqual(exportTables.map((table) => `${table}.csv`));
    for (const table of exportTables) {
      expect([table, files.get(`${table}.csv`)]).toEqual([table, await text(exportTable(shop.db, table))]);
    }
  });

  it("holds as many rows of each table as the database", async () => {
    const files = readZip(await buffer(exportArchive(shop.file)));
    for (const table of exportTables) {
      const [counted] = await shop.db.$queryRawUnsafe<{ n: bigint }[]>(
        `SELECT count(*) AS n FROM "${table}"`,
      );
      const rows = parse(files.get(`${table}.csv`) ?? "", { columns: true });
      expect([table, rows.length]).toEqual([table, Number(counted?.n)]);
    }
    expect(parse(files.get("Movement.csv") ?? "", { columns: true })).toHaveLength(9);
  });

  it("shows one moment: what is recorded while it is read is in none of its tables", async () => {
    const archive = exportArchive(shop.file);
    const parts: Buffer[] = [];
    for await (const part of archive) {
      // The first table is out by now; a parcel goes to tables that are still to come.
      if (parts.length === 0) await recordParcel(shop.db, parcelBody("parcel-4"), by);
      parts.push(Buffer.from(part));
    }
    expect(parts.length).toBeGreaterThan(1);
    const files = readZip(Buffer.concat(parts));
    expect(parse(files.get("Parcel.csv") ?? "", { columns: true })).toHaveLength(3);
    expect(parse(files.get("Movement.csv") ?? "", { columns: true })).toHaveLength(9);
    expect(await shop.db.parcel.count()).toBe(4);
  });

  it("lets go of the database when the download is broken off", async () => {
    const archive = exportArchive(shop.file);
    for await (const _part of archive) break;
    expect(archive.destroyed).toBe(true);
    await saveZone(shop.db, { id: "far", name: "Far", retired: false, position: 1 });
    const [log] = await shop.db.$queryRawUnsafe<{ busy: bigint; log: bigint; checkpointed: bigint }[]>(
      "PRAGMA wal_checkpoint(PASSIVE)",
    );
    // A reader that is still at its old moment would keep the last page of the log from being moved.
    expect(log?.checkpointed).toBe(log?.log);
  });
});
