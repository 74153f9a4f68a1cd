import { text } from "node:stream/consumers";
import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { amount } from "#lib/units/amount";
import { type Database, inTransaction } from "#prisma/client";
import { exportTable, exportTables } from "#prisma/records/export";
import { PLAIN_SUPPLY } from "#prisma/records/plain-supply";
import { saveSupply } from "#prisma/records/supplies";
import { saveZone } from "#prisma/records/zones";
import { type ShopFixture, shopFixture } from "./shop-fixture";

let shop: ShopFixture;
let db: Database;

/** More rows than are read at a time, so that the seam between two reads is crossed. */
const MANY = 4_321;

beforeAll(async () => {
  shop = await shopFixture("Pacific/Kiritimati");
  db = shop.db;
  await saveSupply(db, {
    ...PLAIN_SUPPLY,
    id: "tissue",
    name: 'Tissue, "20 × 30"',
    kind: "tissue",
    useUnit: "sheet",
    countUnit: "ream",
    countAmount: amount(480 * 12_000),
    massMg: 6600,
    massTyped: "6.6 g",
    guessed: true,
    note: "first line\nsecond line",
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

afterAll(() => shop.close());

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
    const supply = (await rowsOf("Supply")).find((row) => row["id"] === "tissue");
    expect(supply).toMatchObject({ name: 'Tissue, "20 × 30"', note: "first line\nsecond line" });
  });

  it("ends its lines as RFC 4180 asks", async () => {
    expect(await text(exportTable(db, "Shop"))).toMatch(/^id,name,[^\n]*\r\nshop,[^\n]*\r\n$/);
  });

  it("writes amounts whole, truth values as words and the unknown as an empty cell", async () => {
    const supply = (await rowsOf("Supply")).find((row) => row["id"] === "tissue");
    expect(supply).toMatchObject({ countAmount: "5760000", guessed: "true", retired: "false", lengthUm: "" });
  });

  // OWASP, CSV Injection, from memory: these six beginnings, and an apostrophe before them.
  it.each(['=HYPERLINK("http://192.0.2.1","x")', "+1+1", "-2+3", "@SUM(A1)", "\t=1+1", "\r=1+1"])(
    "puts an apostrophe before the text %j, which a spreadsheet could run",
    async (name) => {
      await saveZone(db, { id: "near", name, retired: false, position: -1 });
      expect(await rowsOf("Zone")).toEqual([
        { id: "near", name: `'${name}`, retired: "false", position: "-1" },
      ]);
    },
  );

  it("leaves a text alone that has such a sign further on", async () => {
    await saveZone(db, { id: "near", name: "a=1, +2 @3 - 4", retired: false, position: 0 });
    expect(await rowsOf("Zone")).toMatchObject([{ name: "a=1, +2 @3 - 4" }]);
  });

  it("gives each row once, in the order written, across the seams of its reads", async () => {
    const rows = await rowsOf("SupplyDay");
    expect(rows.map((row) => row["amount"])).toEqual(
      Array.from({ length: MANY }, (_, index) => String(-index)),
    );
  });

  it("writes the header of an empty table", async () => {
    expect(await text(exportTable(db, "ClosedSpan"))).toBe("id,fromDay,toDay,words\r\n");
  });

  it("refuses a name that is no table", () => {
    expect(() => exportTable(db, 'Shop"; DROP TABLE "Shop')).toThrow(RangeError);
  });
});
