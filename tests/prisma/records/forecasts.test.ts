import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { amountOfUnits } from "#lib/units/amount";
import { addDays, type Day, day } from "#lib/units/day";
import { inTransaction } from "#prisma/client";
import { removeClosedSpan, saveClosedSpan } from "#prisma/records/closed-spans";
import { recordCount } from "#prisma/records/counts";
import { forecastOn, forecastPast, type KeptForecast } from "#prisma/records/forecasts";
import type { Recorder } from "#prisma/records/ledger";
import { correctParcel, voidParcel } from "#prisma/records/parcel-corrections";
import { parcelOf } from "#prisma/records/parcel-lists";
import { recordParcel } from "#prisma/records/parcels";
import { savePlannedEvent } from "#prisma/records/planned-events";
import { saveRecipe } from "#prisma/records/recipes";
import { rebuildRollUps } from "#prisma/records/roll-ups";
import { saveShop, shopOf } from "#prisma/records/shop";
import { recordSpoilage } from "#prisma/records/spoilage";
import { whatIf } from "#prisma/records/what-if";
import { recipe } from "./forecast-rows-fixture";
import { parcelBody, type ShopFixture, shopFixture } from "./shop-fixture";

const FIRST = day("2025-12-01");
const WEEKS = 14;
const TODAY = day("2026-03-11");
const MONDAY = day("2026-03-09");
const noonOf = (on: string): Recorder => ({ device: "desk", now: `${on}T12:00:00.000Z` });

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
  await saveRecipe(
    shop.db,
    { ...recipe("card", { piece: { paper: 7, bubble: 4 } }), commonPractice: false, note: null },
    "2026-01-01T12:00:00.000Z",
  );
});
afterEach(() => shop.close());

const pack = (id: string, packedOn: Day) =>
  recordParcel(shop.db, parcelBody(id, { packedOn }), noonOf(packedOn));

/** Two parcels each Monday of 14 weeks. */
async function packWeeks(): Promise<void> {
  for (let week = 0; week < WEEKS; week += 1) {
    const on = addDays(FIRST, 7 * week);
    await pack(`a${week}`, on);
    await pack(`b${week}`, on);
  }
}

async function forecast(today = TODAY): Promise<KeptForecast> {
  const found = await forecastOn(shop.db, today);
  if (found === null) throw new TypeError("the fixture's shop is set up");
  return found;
}

/** The forecast without the moment it was made. */
function said({ madeAt, ...rest }: KeptForecast): Omit<KeptForecast, "madeAt"> {
  expect(madeAt).not.toBe("");
  return rest;
}

const isStale = async () => (await shop.db.forecast.findMany({ where: { stale: true } })).length > 0;

describe("kept forecast", () => {
  it("says of a steady shop what it used each week", async () => {
    await packWeeks();
    const { asOf, until, weeksSeen, parcels, itemTypes, supplies } = await forecast();
    expect([asOf, until, weeksSeen]).toEqual([MONDAY, MONDAY, WEEKS]);
    expect(parcels?.path.perWeek[0]).toBeCloseTo(2, 6);
    expect(itemTypes.get("mug")?.path.perWeek[0]).toBeCloseTo(2, 6);
    expect(supplies.get("paper")?.path.perWeek[0]).toBeCloseTo(14, 4);
    expect(supplies.get("bubble")?.path.perWeek[0]).toBeCloseTo(8, 4);
    expect(supplies.get("paper")?.correction).toEqual({ kind: "none" });
  });

  it("is worked out once and then only read, on every day of its week", async () => {
    await packWeeks();
    const made = await forecast();
    expect(await forecast()).toEqual(made);
    expect(await forecast(addDays(TODAY, 2))).toEqual(made);
    expect(await shop.db.forecast.count()).toBe(1);
  });

  it("is worked out once for all who ask at the same time", async () => {
    await packWeeks();
    const [first, second, third] = await Promise.all([forecast(), forecast(), forecast()]);
    expect(second).toEqual(first);
    expect(third).toEqual(first);
    expect(await shop.db.forecastSubject.count({ where: { kind: "supply" } })).toBe(first.supplies.size);
  });

  it("does not learn of what is packed in the running week before that is over", async () => {
    await packWeeks();
    const made = await forecast();
    await pack("today", TODAY);
    expect(await isStale()).toBe(false);
    expect(await forecast()).toEqual(made);
    expect(said(await forecast(addDays(TODAY, 7))).weeksSeen).toBe(WEEKS + 1);
  });

  it("learns of whatever changes what it was made from", async () => {
    await packWeeks();
    const closed = { id: "trip", fromDay: "2026-02-02", toDay: "2026-02-08", words: "away" };
    const changes: readonly (readonly [string, () => Promise<unknown>])[] = [
      ["a parcel of a past week", () => pack("late", addDays(MONDAY, -3))],
      ["a parcel voided", () => voidParcel(shop.db, "a3", "undone", noonOf(TODAY))],
      ["a parcel corrected", () => correctInto("a4", 3)],
      ["something spoilt", () => spoil(addDays(MONDAY, -2))],
      ["closed days", () => saveClosedSpan(shop.db, closed)],
      ["closed days taken off", () => removeClosedSpan(shop.db, "trip")],
      ["an event", () => savePlannedEvent(shop.db, EVENT)],
      ["a new recipe", () => newRecipe()],
      ["the seller's guess", () => guess(12)],
      ["roll-ups rebuilt", () => rebuildRollUps(shop.db)],
    ];
    for (const [what, change] of changes) {
      await forecast();
      expect(await isStale(), `before ${what}`).toBe(false);
      await change();
      expect(await isStale(), what).toBe(true);
      const learnt = said(await forecast());
      await forgetForecasts();
      expect(learnt, what).toEqual(said(await forecast()));
    }
  });

  it("learns of a count that found something missing from the next week on", async () => {
    await packWeeks();
    await count("c1", "2025-12-05", 1_000);
    await count("c2", "2026-01-20", 900);
    const before = said(await forecast());
    expect(before.supplies.get("paper")?.correction.kind).toBe("none");
    await count("c3", TODAY, 400);
    expect(said(await forecast())).toEqual(before);
    const after = await forecast(addDays(TODAY, 7));
    expect(after.supplies.get("paper")?.correction.kind).toBe("corrected");
  });

  it("is made anew where a parcel came in while it was being made", async () => {
    await packWeeks();
    const making = forecast();
    await pack("meanwhile", addDays(MONDAY, -1));
    await making;
    const after = said(await forecast());
    await forgetForecasts();
    expect(after).toEqual(said(await forecast()));
    expect(after.parcels?.path.perWeek[0]).toBeGreaterThan(2);
  });

  it("keeps those of a dozen days, not of every day that was ever asked for", async () => {
    await packWeeks();
    for (let week = 0; week < WEEKS; week += 1) await forecast(addDays(FIRST, 7 * week + 8));
    expect(await shop.db.forecast.count()).toBe(12);
  });

  it("is that of the day while no week is over", async () => {
    const first = day("2026-03-10");
    await pack("one", first);
    const made = await forecast(TODAY);
    expect([made.asOf, made.until, made.weeksSeen]).toEqual([TODAY, "2026-03-12", 0]);
    await pack("two", TODAY);
    const after = await forecast(TODAY);
    // 2 parcels in 2 days are 7 a week.
    expect(after.parcels?.path.perWeek[0]).toBeCloseTo(7, 6);
  });

  it("starts from the seller's guess before the first parcel, and is empty without one", async () => {
    expect((await forecast()).parcels).toBeNull();
    await guess(10);
    const { parcels, supplies } = await forecast();
    expect(parcels?.path.perWeek[0]).toBe(10);
    expect(parcels?.guessedShare).toBe(1);
    expect(supplies.get("paper")?.path.perWeek[0]).toBeCloseTo(70, 6);
  });

  it("is none before the shop is set up", async () => {
    const empty = await shopFixture();
    try {
      await inTransaction(empty.db, (tx) => tx.shop.deleteMany());
      expect(await forecastOn(empty.db, TODAY)).toBeNull();
      expect(await forecastPast(empty.db, TODAY, { kind: "shop", id: "shop" })).toBeNull();
    } finally {
      await empty.close();
    }
  });
});

describe("what stands behind a forecast", () => {
  it("is the weeks, the routes tried and what would have been said", async () => {
    await packWeeks();
    const past = await forecastPast(shop.db, TODAY, { kind: "supply", id: "paper" });
    expect(past?.weeks.map((week) => week.recorded)).toEqual(new Array(WEEKS).fill(14));
    expect(past?.tried.length).toBeGreaterThan(3);
    expect(past?.said.at(-1)).toMatchObject({ actual: 28, from: "2026-02-23" });
    expect(past?.correction).toBeNull();
    expect(await forecastPast(shop.db, TODAY, { kind: "supply", id: "nothing" })).toBeNull();
  });
});

describe("what if", () => {
  it("says what more parcels would use and keeps nothing of it", async () => {
    await packWeeks();
    const made = await forecast();
    const subject = { kind: "supply", id: "paper" } as const;
    const more = await whatIf(shop.db, TODAY, subject, { parcelsPercent: 50, recipe: null });
    expect(more?.path.perWeek[0]).toBeCloseTo(21, 4);
    expect(more?.spread).toEqual(made.supplies.get("paper")?.spread);
    expect(await forecast()).toEqual(made);
  });

  it("says what another style would use", async () => {
    await packWeeks();
    const onBubble = { ...recipe("wrap", { style: "bubble", piece: { paper: 1, bubble: 9 } }) };
    await saveRecipe(shop.db, { ...onBubble, commonPractice: false, note: null }, noonOf(TODAY).now);
    const made = await forecast();
    const change = { parcelsPercent: 0, recipe: { itemTypeId: "mug", style: "bubble" } } as const;
    const of = (id: string) => whatIf(shop.db, TODAY, { kind: "supply", id }, change);
    expect((await of("paper"))?.path.perWeek[0]).toBeCloseTo(2, 4);
    expect((await of("bubble"))?.path.perWeek[0]).toBeCloseTo(18, 4);
    expect(await forecast()).toEqual(made);
  });
});

const EVENT = {
  id: "market",
  name: "Market",
  fromDay: day("2026-03-16"),
  toDay: day("2026-03-22"),
  upliftPercent: 100,
  itemTypeIds: [],
};

async function correctInto(id: string, pieces: number): Promise<void> {
  const parcel = await parcelOf(shop.db, id);
  if (parcel === null) throw new TypeError(`${id} was recorded`);
  const body = parcelBody(id, { packedOn: parcel.packedOn, pieces: [{ itemTypeId: "mug", pieces }] });
  await correctParcel(shop.db, body, noonOf(TODAY));
}

async function spoil(on: Day): Promise<void> {
  const sheets = { amount: amountOfUnits(5), typedValue: "5", typedUnit: "sheet" };
  await recordSpoilage(shop.db, { supplyId: "paper", on, words: "torn", ...sheets }, noonOf(TODAY));
}

async function newRecipe(): Promise<void> {
  const next = recipe("next", { piece: { paper: 5, bubble: 5 }, from: "2026-03-10" });
  await saveRecipe(shop.db, { ...next, commonPractice: false, note: null }, noonOf(TODAY).now);
}

async function guess(guessedParcels: number): Promise<void> {
  const now = await shopOf(shop.db);
  if (now === null) throw new TypeError("the fixture's shop is set up");
  await saveShop(shop.db, { ...now, guessedParcels });
}

async function count(id: string, on: string, sheets: number): Promise<void> {
  const counted = { id, supplyId: "paper", amount: amountOfUnits(sheets), method: "number" } as const;
  await recordCount(shop.db, { ...counted, typed: String(sheets), note: null }, noonOf(on));
}

async function forgetForecasts(): Promise<void> {
  await inTransaction(shop.db, (tx) => tx.forecast.deleteMany());
}
