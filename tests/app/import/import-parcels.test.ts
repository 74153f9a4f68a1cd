import { createHash } from "node:crypto";
import { copyFileSync, existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { importParcels } from "#app/import/import-parcels.ts";
import { problemWords } from "#app/import/problem-words.ts";
import { type LightShop, lightShop } from "../../prisma/records/import/light-shop";

const NOW = "2026-11-25T18:00:00.000Z";
/** Online Retail, UCI Machine Learning Repository, D. Chen, 2015, doi 10.24432/C5BW33, CC BY 4.0 (a part of it). */
const GIFTWARE = join(import.meta.dirname, "../../reference/data/giftware-parcels.csv");

let shop: LightShop;
beforeEach(() => {
  shop = lightShop();
});
afterEach(() => shop.close());

async function importText(text: string | Buffer, source = "orders") {
  const path = join(shop.folder, "orders.csv");
  writeFileSync(path, text);
  return importParcels(shop.file, path, { source, mapping: "guess", createMissing: true, now: NOW });
}

function number(sql: string): number {
  return Object.values(shop.db.prepare<[], Record<string, number>>(sql).get() ?? {})[0] ?? Number.NaN;
}

const stock = () =>
  shop.db.prepare(`SELECT "supplyId", "amount", "value" FROM "SupplyStock" ORDER BY 1`).all();
const words = (run: Awaited<ReturnType<typeof importText>>) =>
  (run.problems?.problems ?? []).map(problemWords);

describe("import of the giftware parcels", () => {
  it("books its 3,187 orders as parcels, and nothing when the file comes again", async () => {
    expect(existsSync(GIFTWARE)).toBe(true);
    copyFileSync(GIFTWARE, join(shop.folder, "g.csv"));
    const options = { source: "giftware", createMissing: true, now: NOW } as const;
    const first = await importParcels(shop.file, join(shop.folder, "g.csv"), options);
    expect(first).toMatchObject({ state: "committed", rowsRead: 4813, newParcels: 3187, sameParcels: 0 });
    const before = { stock: stock(), movements: number(`SELECT COUNT(*) FROM "Movement"`) };
    const again = await importParcels(shop.file, join(shop.folder, "g.csv"), options);
    expect(again).toMatchObject({ state: "committed", newParcels: 0, sameParcels: 3187, changedParcels: 0 });
    expect({ stock: stock(), movements: number(`SELECT COUNT(*) FROM "Movement"`) }).toEqual(before);
    expect(number(`SELECT COUNT(*) FROM "Parcel"`)).toBe(3187);
    expect(number(`SELECT SUM("parcels") FROM "ParcelDay"`)).toBe(3187);
    expect(number(`SELECT SUM("pieces") FROM "ParcelDay"`)).toBe(
      number(`SELECT SUM("pieces") FROM "ParcelPiece"`),
    );
    expect(number(`SELECT COUNT(*) FROM "StagedRow"`)).toBe(0);
  });
});

describe("import of parcels", () => {
  it("makes one parcel of an order's rows of one day, with the bill of the recipe of that day", async () => {
    const run = await importText(
      "packed on,order,item type,pieces\n2026-07-01,A1,Mug,1\n2026-07-01,A1,mug,2\n2026-05-31,A2,MUG,1\n2026-07-02,A1,mug,1\n",
    );
    expect(run).toMatchObject({ state: "committed", newParcels: 3 });
    const rows = shop.db
      .prepare(`SELECT p."packedOn", m."supplyId", m."amount" FROM "Movement" m JOIN "Parcel" p ON p."id" = m."parcelId"
        ORDER BY p."packedOn", m."supplyId"`)
      .all();
    expect(rows).toEqual([
      { packedOn: "2026-05-31", supplyId: "tissue", amount: -24_000 },
      { packedOn: "2026-07-01", supplyId: "carton-12", amount: -12_000 },
      { packedOn: "2026-07-01", supplyId: "tape", amount: -48_000 },
      { packedOn: "2026-07-01", supplyId: "tissue", amount: -108_000 },
      { packedOn: "2026-07-02", supplyId: "carton-8", amount: -12_000 },
      { packedOn: "2026-07-02", supplyId: "tape", amount: -48_000 },
      { packedOn: "2026-07-02", supplyId: "tissue", amount: -36_000 },
    ]);
  });

  it("values use at the supply's cost, and leaves it unknown where no cost is known", async () => {
    await importText("date,item type,pieces\n2026-03-01,mug,1\n2026-03-01,plate,1\n");
    const rows = shop.db.prepare(`SELECT "supplyId", "value" FROM "Movement" ORDER BY "supplyId"`).all();
    // 24,000 × 20,007 / 12,000 = 40,014
    expect(rows).toEqual([
      { supplyId: "paper", value: null },
      { supplyId: "tissue", value: -40_014 },
    ]);
    expect(stock()).toContainEqual({ supplyId: "tissue", amount: -24_000, value: -40_014 });
  });

  it("keeps rows without a reference apart, and knows them again", async () => {
    const text = "date,item type\n2026-03-01,mug\n2026-03-01,mug\n2026-03-02,mug\n";
    expect(await importText(text)).toMatchObject({ newParcels: 3 });
    expect(await importText(`${text}2026-03-01,mug\n`)).toMatchObject({ newParcels: 1, sameParcels: 3 });
  });

  it("books a changed row by reversal and leaves the sum as if it had been right at once", async () => {
    await importText("date,order,item type,pieces\n2026-07-01,A1,mug,1\n2026-07-01,A2,mug,1\n");
    const changed = await importText(
      "date,order,item type,pieces\n2026-07-01,A1,mug,2\n2026-07-01,A2,mug,1\n",
    );
    expect(changed).toMatchObject({ state: "committed", newParcels: 0, sameParcels: 1, changedParcels: 1 });
    expect(number(`SELECT COUNT(*) FROM "Movement" WHERE "reversesId" IS NOT NULL`)).toBe(3);
    expect(number(`SELECT "amount" FROM "SupplyStock" WHERE "supplyId" = 'tissue'`)).toBe(-3 * 36_000);
    expect(number(`SELECT SUM("amount") FROM "SupplyDay" WHERE "supplyId" = 'tissue'`)).toBe(-3 * 36_000);
    expect(number(`SELECT SUM("pieces") FROM "ParcelDay"`)).toBe(3);
    expect(number(`SELECT "revision" FROM "Parcel" WHERE "sourceRef" = 'order:1:A1'`)).toBe(2);
  });

  it("takes a moved day as a change of the same parcel", async () => {
    await importText("date,order,item type\n2026-07-01,A1,mug\n");
    const moved = await importText("date,order,item type\n2026-07-03,A1,mug\n");
    expect(moved).toMatchObject({ newParcels: 0, changedParcels: 1 });
    expect(number(`SELECT COUNT(*) FROM "ParcelDay" WHERE "parcels" = 1 AND "day" = '2026-07-03'`)).toBe(1);
    expect(number(`SELECT SUM("parcels") FROM "ParcelDay" WHERE "day" = '2026-07-01'`)).toBe(0);
  });

  it("leaves a parcel that was put right by hand as it is", async () => {
    await importText("date,order,item type\n2026-07-01,A1,mug\n");
    shop.db.prepare(`UPDATE "Parcel" SET "bodyHash" = 'by hand', "revision" = 2`).run();
    const run = await importText("date,order,item type,pieces\n2026-07-01,A1,mug,5\n");
    expect(run).toMatchObject({ state: "committed", sameParcels: 1, changedParcels: 0 });
    expect(number(`SELECT SUM("pieces") FROM "ParcelPiece"`)).toBe(1);
  });

  it("does not move today's stock by what was packed before a later count", async () => {
    shop.db.exec(`
      INSERT INTO "Count" ("id", "supplyId", "countedAt", "countedDay", "recordedAt", "recordedBy", "amount", "bookAmount", "method", "typed")
        VALUES ('c1', 'tissue', '2026-08-01T15:00:00.000Z', '2026-08-01', '2026-08-01T15:00:00.000Z', 'desk', 1200000, 0, 'number', '100'),
               ('c2', 'tissue', '2026-09-01T15:00:00.000Z', '2026-09-01', '2026-09-01T15:00:00.000Z', 'desk', 1200000, 1200000, 'number', '100');
      INSERT INTO "Movement" ("supplyId", "amount", "value", "cause", "effectiveAt", "effectiveDay", "recordedAt", "recordedBy", "countId")
        VALUES ('tissue', 1200000, 2000700, 'opening', '2026-08-01T15:00:00.000Z', '2026-08-01', '2026-08-01T15:00:00.000Z', 'desk', 'c1');
      UPDATE "SupplyStock" SET "amount" = 1200000, "value" = 2000700, "countedAt" = '2026-09-01T15:00:00.000Z' WHERE "supplyId" = 'tissue'`);
    await importText(
      "date,order,item type\n2026-07-01,A1,mug\n2026-07-02,A2,mug\n2026-08-15,A3,mug\n2026-09-02,A4,mug\n",
    );
    // Only the parcel packed after the last count moves the stock: 3 sheets.
    expect(stock()).toContainEqual({
      supplyId: "tissue",
      amount: 1_200_000 - 36_000,
      value: 2_000_700 - 60_021,
    });
    const balancing = shop.db
      .prepare(
        `SELECT "countId", "cause", "amount", "effectiveDay" FROM "Movement" WHERE "words" = 'already seen by this count' ORDER BY 1`,
      )
      .all();
    expect(balancing).toEqual([
      { countId: "c1", cause: "opening", amount: 72_000, effectiveDay: "2026-08-01" },
      { countId: "c2", cause: "count-difference", amount: 36_000, effectiveDay: "2026-09-01" },
    ]);
  });

  it("takes effect at the end of the shop's day", async () => {
    await importText("date,item type\n2026-07-01,mug\n");
    expect(shop.db.prepare(`SELECT "effectiveAt" FROM "Parcel"`).get()).toEqual({
      effectiveAt: "2026-07-02T04:59:59.999Z",
    });
  });

  it("never takes effect later than it was recorded", async () => {
    await importText("date,item type\n2026-11-25,mug\n");
    expect(shop.db.prepare(`SELECT "effectiveAt" FROM "Parcel"`).get()).toEqual({ effectiveAt: NOW });
  });

  it("stores nothing of columns that are not mapped", async () => {
    await importText("date,item type,buyer name,street\n2026-07-01,mug,Someone Invented,Nowhere 1\n");
    shop.db.pragma("wal_checkpoint(TRUNCATE)");
    expect(readFileSync(shop.file).includes("Someone Invented")).toBe(false);
    expect(readFileSync(shop.file).includes("Nowhere 1")).toBe(false);
  });

  it("reads weight, postage, zone, carton and the unusual mark", async () => {
    const run = await importText(
      "date;item type;zone;carton;weight kg;postage;unusual\n2026-07-01;mug;Far away;12 x 9 x 8 carton;1,25;8,40;yes\n",
    );
    expect(run).toMatchObject({ state: "committed", problems: null });
    expect(
      shop.db
        .prepare(`SELECT "zoneId", "scaleMg", "scaleTyped", "postageMinor", "unusual" FROM "Parcel"`)
        .get(),
    ).toEqual({
      zoneId: "far-away",
      scaleMg: 1_250_000,
      scaleTyped: "1,25 kg",
      postageMinor: 840,
      unusual: 1,
    });
    expect(number(`SELECT COUNT(*) FROM "SupplyDay" WHERE "unusual" = 1`)).toBe(3);
  });
});

describe("refusal of a file", () => {
  const fingerprint = () =>
    createHash("sha256")
      .update(
        JSON.stringify(
          ["Movement", "Parcel", "SupplyStock", "SupplyDay", "ParcelDay", "ItemType", "BuyerOrder"].map((t) =>
            shop.db.prepare(`SELECT * FROM "${t}"`).all(),
          ),
        ),
      )
      .digest("hex");

  it("names line, field, value and what to do, and writes nothing", async () => {
    const before = fingerprint();
    const run = await importText(
      "date,order,item type,pieces\n2026-07-01,A1,mug,1\n2026-02-30,A2,mug,1\n2026-07-01,A3,,1\n2026-07-01,A4,mug,0\n2027-01-01,A5,mug,1\n2026-07-01,A6,mug\n",
    );
    expect(run.state).toBe("refused");
    expect(words(run)).toEqual([
      "Line 3: Day packed: “2026-02-30” can't be read. Write a day written as chosen for the column.",
      "Line 4: Item type is empty. Fill it in, or take the row out.",
      "Line 5: Pieces: “0” can't be read. Write a whole number from 1 to 10,000.",
      "Line 6: “2027-01-01” lies after today. Mend the day, or check how days are written in this file.",
      "Line 7: 3 fields stand under 4 columns. Put a field that holds the delimiter in quotation marks, or add what is missing.",
    ]);
    expect(fingerprint()).toBe(before);
    expect(number(`SELECT COUNT(*) FROM "StagedRow"`)).toBe(0);
  });

  it("lists the first hundred problems and counts them all", async () => {
    const run = await importText(
      `date,item type,pieces\n2026-07-01,mug,1\n${"2026-07-01,mug,none\n".repeat(250)}`,
    );
    expect(run.problems?.problems).toHaveLength(100);
    expect(run.problems?.total).toBe(250);
  });

  it("asks which of two formats the days have where the whole file fits both", async () => {
    const run = await importText("date,item type\n04/05/2026,mug\n06/07/2026,mug\n");
    expect(words(run)).toEqual([
      "The days in “date” can be read as DD/MM/YYYY or as MM/DD/YYYY. Choose which one it is.",
    ]);
  });

  it("needs no such question where one day of the file settles it", async () => {
    const run = await importText("date,item type\n04/05/2026,mug\n06/17/2026,mug\n");
    expect(run.state).toBe("committed");
    expect(number(`SELECT COUNT(*) FROM "Parcel" WHERE "packedOn" IN ('2026-04-05', '2026-06-17')`)).toBe(2);
  });

  it("refuses rows of one order and day that disagree on what a parcel has once", async () => {
    const run = await importText(
      "date,order,item type,zone\n2026-07-01,A1,mug,near\n2026-07-01,A1,plate,far\n",
    );
    expect(words(run)[0]).toMatch(/^Line 3: Zone is not the same on all rows of order A1/);
  });

  it("refuses a spreadsheet, an empty file and a header alone", async () => {
    expect(words(await importText(Buffer.from([0x50, 0x4b, 3, 4, 1])))[0]).toMatch(/spreadsheet/);
    expect(words(await importText(""))[0]).toMatch(/empty/);
    expect(words(await importText("date,item type\n"))[0]).toMatch(/no rows/);
  });

  it("refuses a quotation mark that is never closed without reading on for ever", async () => {
    const run = await importText(`date,item type\n2026-07-01,"mug\n${"2026-07-01,mug\n".repeat(100_000)}`);
    expect(run.state).toBe("refused");
    expect(words(run)[0]).toMatch(/quotation mark/);
  });
});

describe("encodings and delimiters", () => {
  const line = (sign: string) =>
    `packed on${sign}order${sign}item type\r\n2026-07-01${sign}Ö-1${sign}"Mug"\r\n`;
  const reference = () => shop.db.prepare(`SELECT "reference" FROM "BuyerOrder"`).all();

  it.each([",", ";", "\t", "|"])("reads rows parted by %j", async (sign) => {
    expect(await importText(line(sign))).toMatchObject({ state: "committed", newParcels: 1 });
    expect(reference()).toEqual([{ reference: "Ö-1" }]);
  });

  const utf16le = Buffer.from(`\ufeff${line(",")}`, "utf16le");
  it.each([
    ["UTF-8 with a mark", Buffer.from(`\ufeff${line(",")}`, "utf8")],
    ["UTF-16 little endian", utf16le],
    ["UTF-16 big endian", Buffer.from(utf16le).swap16()],
    ["Windows-1252", Buffer.from(line(","), "latin1")],
  ])("reads %s", async (_name, bytes) => {
    expect(await importText(bytes)).toMatchObject({ state: "committed", newParcels: 1 });
    expect(reference()).toEqual([{ reference: "Ö-1" }]);
  });

  it("reads a quoted field over two lines with doubled quotes in a column that is not mapped", async () => {
    const run = await importText('date,note,item type\n2026-07-01,"two\nlines, ""quoted""",mug\n');
    expect(run).toMatchObject({ state: "committed", rowsRead: 1 });
  });
});
