import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { instant } from "#lib/units/instant";
import { closeDatabase, type Database, openDatabase } from "#prisma/client";
import { migrateDatabase } from "#prisma/migrate";
import { plannedEventsOf } from "#prisma/records/planned-events";
import { shopOf } from "#prisma/records/shop";
import { loadShopFile } from "#prisma/records/shop-file";
import { readShopFile } from "#prisma/records/shop-file-problems";

const NOW = instant("2026-03-02T12:00:00.000Z");
const SETTINGS = {
  name: "Test shop",
  timeZone: "UTC",
  currency: "USD",
  minorDigits: 2,
  weekStartsOn: 1,
  measures: "imperial",
  reviewDays: 7,
  servicePerMille: 950,
  coverWeeks: 4,
  defaultStyle: "paper",
};
const FILE = {
  shop: SETTINGS,
  zones: [],
  closed: [],
  supplies: [{ id: "tissue", name: "Tissue", kind: "tissue", unit: "sheet" }],
  suppliers: [],
  offers: [],
  itemTypes: [{ id: "mug", name: "Mug", recipes: [] }],
  counts: [],
  receipts: [],
};
const EVENT = { name: "Mugs on offer", from: "2026-12-01", to: "2026-12-02", upliftPercent: 100 };

let folder: string;
let db: Database;
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), "wadding-shop-file-"));
  const file = join(folder, "shop.db");
  migrateDatabase(file);
  db = await openDatabase(file);
});
afterEach(async () => {
  await closeDatabase(db);
  rmSync(folder, { recursive: true });
});

function problemsOf(event: object) {
  const reading = readShopFile({ ...FILE, events: [event] });
  return reading.kind === "unreadable" ? reading.problems.map(({ path }) => path) : [];
}

describe("a shop file", () => {
  it("brings its planned events and the guess of parcels a week", async () => {
    const file = {
      ...FILE,
      shop: { ...SETTINGS, guessedParcels: 12 },
      events: [{ ...EVENT, itemTypes: ["mug"] }],
    };
    expect(await loadShopFile(db, file, { now: NOW })).toEqual({ kind: "loaded" });
    expect((await shopOf(db))?.guessedParcels).toBe(12);
    expect(await plannedEventsOf(db)).toMatchObject([
      {
        name: "Mugs on offer",
        fromDay: "2026-12-01",
        toDay: "2026-12-02",
        upliftPercent: 100,
        itemTypeIds: ["mug"],
      },
    ]);
  });

  it("needs neither: then nothing is planned and nothing guessed", async () => {
    expect(await loadShopFile(db, FILE, { now: NOW })).toEqual({ kind: "loaded" });
    expect((await shopOf(db))?.guessedParcels).toBeNull();
    expect(await plannedEventsOf(db)).toEqual([]);
  });

  it("names the field of an event that cannot be", () => {
    expect(problemsOf(EVENT)).toEqual([]);
    expect(problemsOf({ ...EVENT, to: "2026-11-30" })).toEqual(["events[0].to"]);
    expect(problemsOf({ ...EVENT, to: "2027-03-30" })).toEqual([]);
    expect(problemsOf({ ...EVENT, to: "2027-03-31" })).toEqual(["events[0].to"]);
    expect(problemsOf({ ...EVENT, upliftPercent: -101 })).toEqual(["events[0].upliftPercent"]);
    expect(problemsOf({ ...EVENT, itemTypes: ["mug", "jug"] })).toEqual(["events[0].itemTypes[1]"]);
  });
});
