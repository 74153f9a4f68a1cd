import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { text } from "node:stream/consumers";
import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { amount } from "#lib/units/amount";
import { closeDatabase, type Database, inTransaction, openDatabase } from "#prisma/client";
import { migrateDatabase } from "#prisma/migrate";
import { exportTable, exportTables } from "#prisma/records/export";
import { saveShop } from "#prisma/records/shop";
import { saveSupply } from "#prisma/records/supplies";

const folder = mkdtempSync(join(tmpdir(), "wadding-export-"));
const file = join(folder, "shop.db");
let db: Database;

/** More rows than are read at a time, so that the seam between two reads is crossed. */
const MANY = 4_321;

beforeAll(async () => {
  await migrateDatabase(file);
  db = await openDatabase(file);
  await saveShop(db, {
    name: "Sandpiper Pottery",
    timeZone: "Pacific/Kiritimati",
    currency: "USD",
    minorDigits: 2,
    weekStartsOn: 1,
    measures: "imperial",
    reviewDays: 7,
    servicePerMille: 950,
    coverWeeks: 8,
    defaultStyle: "paper",
  });
  await saveSupply(db, {
    id: "tissue",
    name: 'Tissue, "20 × 30"',
    kind: "tissue",
    useUnit: "sheet",
    countUnit: "ream",
    countAmount: amount(480 * 12_000),
    massMg: 6600,
    massTyped: "6.6 g",
    lengthUm: null,
    widthUm: null,
    heightUm: null,
    sizesTyped: null,
    coreUm: null,
    fullUm: null,
    fullAmount: null,
    coreMassMg: null,
    sheetNm: null,
    wall: null,
    rating: null,
    ratedMassMg: null,
    guessed: true,
    note: "first line\nsecond line",
    retired: false,
    position: 0,
  });
  await inTransaction(db, (tx) =>
    tx.supplyDay.createMany({
      data: Array.from({ length: MANY }, (_, index) => ({
        supplyId: "tissue",
        day: `day-${String(index).padStart(5, "0")}`,
        cause: "packed",
        unusual: false,
        amount: BigInt(-index),
        value: 0n,
      })),
    }),
  );
});

afterAll(async () => {
  await closeDatabase(db);
  rmSync(folder, { recursive: true });
});

async function rowsOf(table: string): Promise<Record<string, string>[]> {
  return parse(await text(exportTable(db, table)), { columns: true });
}

describe("export of a table", () => {
  it("covers every table that the database has, save the runner's own", async () => {
    const tables = await db.$queryRawUnsafe<{ name: string }[]>(
      "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name <> '_prisma_migrations'",
    );
    expect([...exportTables].sort()).toEqual(tables.map((table) => table.name).sort());
  });

  // RFC 4180: quotes doubled, line breaks inside quotes, lines ended by CRLF. https://www.rfc-editor.org/rfc/rfc4180
  it("writes text with quotes, commas and line breaks so that a CSV reader gives it back", async () => {
    const [supply] = await rowsOf("Supply");
    expect(supply).toMatchObject({ name: 'Tissue, "20 × 30"', note: "first line\nsecond line" });
  });

  it("ends its lines as RFC 4180 asks", async () => {
    expect(await text(exportTable(db, "Shop"))).toMatch(/^id,name,[^\n]*\r\nshop,[^\n]*\r\n$/);
  });

  it("writes amounts whole, truth values as words and the unknown as an empty cell", async () => {
    const [supply] = await rowsOf("Supply");
    expect(supply).toMatchObject({ countAmount: "5760000", guessed: "true", retired: "false", lengthUm: "" });
  });

  it("gives each row once, in the order written, across the seams of its reads", async () => {
    const rows = await rowsOf("SupplyDay");
    expect(rows.map((row) => row["amount"])).toEqual(
      Array.from({ length: MANY }, (_, index) => String(-index)),
    );
  });

  it("writes the header of an empty table", async () => {
    expect(await text(exportTable(db, "Zone"))).toBe("id,name,retired,position\r\n");
  });

  it("refuses a name that is no table", () => {
    expect(() => exportTable(db, 'Shop"; DROP TABLE "Shop')).toThrow(RangeError);
  });
});
