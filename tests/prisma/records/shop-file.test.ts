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

  it("brings a supplier's days, an offer's steps and room, a supply's goal and the shop's terms", async () => {
    const outcome = await loadShopFile(
      db,
      {
        ...FILE,
        shop: { ...SETTINGS, goal: "share", longestCoverWeeks: 20, weekLimitMinor: 30_000, room: "40 cu ft" },
        supplies: [
          {
            ...FILE.supplies[0],
            goal: { kind: "cycles", perMille: 980 },
            shelfLifeDays: 365,
            lastUseOn: "2027-01-31",
          },
        ],
        suppliers: [
          {
            id: "north",
            name: "Invented supplier",
            leadTimeDays: 6,
            deliveryMinor: 500,
            workingDays: true,
            orderDays: "12345",
            cutOff: "14:00",
            peak: { from: "09-01", to: "12-20", extraDays: 4 },
            closed: [{ from: "2026-12-24", to: "2027-01-02" }],
          },
        ],
        offers: [
          {
            id: "ream",
            supply: "tissue",
            supplier: "north",
            pack: "ream",
            packAmount: "480",
            price: 1_750,
            breakKind: "incremental",
            room: "0.5 cu ft",
          },
        ],
      },
      { now: NOW },
    );
    expect(outcome).toEqual({ kind: "loaded" });
    expect(await shopOf(db)).toMatchObject({
      goal: "share",
      longestCoverWeeks: 20,
      holdingPerMille: 200,
      roomMl: 1_132_674,
    });
    expect(await db.supply.findFirst()).toMatchObject({
      goal: "cycles",
      goalPerMille: 980,
      shelfLifeDays: 365,
    });
    expect(await db.supplier.findFirst({ include: { closures: true } })).toMatchObject({
      workingDays: true,
      cutOff: "14:00",
      peakFrom: "09-01",
      closures: [{ fromDay: "2026-12-24", toDay: "2027-01-02" }],
    });
    expect(await db.offer.findFirst()).toMatchObject({ breakKind: "incremental", volumeMl: 14_158 });
  });

  it("names a room that can't be read by its path", () => {
    const reading = readShopFile({ ...FILE, shop: { ...SETTINGS, room: "plenty" } });
    expect(reading).toMatchObject({ problems: [{ path: "shop.room" }] });
  });
});
